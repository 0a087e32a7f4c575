## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Local codes, and the practice of those licensed to work under them, come before anything in this report. The report rates heat; it is no statement on the safety of the cooker or of food.
caution-governs = { "" }
caution-burns-title = Burns and scalds
caution-burns-text = The pot, its lid, the glazing, the grate and steam are hot enough to burn at a touch, long before the water boils: bare metal burns at about 65 °C within a second and at about 51 °C within a minute. Use dry gloves, open the lid away from you, and shade the cooker and let the pot stand before you carry it. Hot glass cracks when cold water meets it, and a narrow tube can throw its boiling water out.
caution-burns-source = ISO 13732-1:2006, values from memory; the rest is common practice, no published source
caution-light-title = Concentrated light and glare
caution-light-text = Never look into the focus, or at the sun or its image in a reflector or panel: no sunglasses make that safe, and dark glasses are not enough near the focus. Keep head and hands out of the beam. Turn the reflector away from the sun, or shade it, before you reach for the pot. Mind that it can dazzle neighbours, drivers and passers-by.
caution-light-source = common practice, no published source
caution-fire-title = Fire
caution-fire-text = A reflector keeps its focus while the sun moves, and so can set light to dry grass, cloth, wood or a wall that it did not face an hour ago. Set it up on bare ground, clear of anything that burns, keep water or sand at hand, and cover the reflector or turn it down when it is not in use, indoors and in storage too. Never put water on burning fat: cover it.
caution-fire-source = common practice, no published source
caution-unattended-title = Never unattended
caution-unattended-text = Somebody who knows the hazards stays with the cooker, aims it, and watches the pot. A pot that has boiled dry overheats, cracks or catches fire; a sealed jar or a lid clamped down can burst.
caution-unattended-source = common practice, no published source
caution-children-title = Children and animals
caution-children-text = Keep children and animals outside a marked line round the cooker. They do not see the focus, and it may be at the height of their eyes.
caution-children-source = common practice, no published source
caution-wind-title = Wind
caution-wind-text = A reflector is a sail. Weigh or tie it down, and put it away before strong wind: when it tips over it spills boiling water and throws its focus somewhere else.
caution-wind-source = common practice, no published source
caution-materials-title = Sun, heat and materials
caution-materials-text = Whoever tests stands in the sun for hours: hat, shade, water and breaks. Use no paint, film, adhesive or galvanised metal that gets hot near food or gives off fumes; heat a new cooker once without food, outdoors.
caution-materials-source = common practice, no published source
caution-food-title = Food safety
caution-food-text = Bacteria grow fast between 5 °C and 60 °C. Food must not stay in that range for more than two hours in all, one hour where the air is above 32 °C; a cooker that heats slowly, or a cloud, can take it past that, and reheating does not undo what has formed by then. Measure inside the food: at least 74 °C all through. Keep hot food at 60 °C or above. If in doubt, throw it out.
caution-food-source = USDA FSIS, danger zone 40 to 140 °F, two-hour rule and safe minimum temperatures (74 °C, that of poultry and leftovers, is the highest of them); WHO, Five Keys to Safer Food, 5 °C to 60 °C; on reheating: common practice, no published source
caution-water-title = Drinking water
caution-water-text = Heat kills germs; it takes away no poison, salt or dirt. Bring all of the water to a rolling boil and keep it boiling for one minute, above 1500 m for three. Less heat takes longer and is less sure: 65 °C held for six minutes is what is called pasteurised, and viruses die only slowly between 60 °C and 65 °C. Let the water cool covered, in the vessel it was heated in.
caution-water-source = US EPA boil-water advice (1 min, 3 min above 5000 ft), as quoted in Emerging Infectious Diseases 31(8), 2025; WHO/FWC/WSH/15.02; Ciochetti and Metcalf 1984, Appl. Environ. Microbiol. 47, value from memory
