
## What it means for cooking

# As ISO/IEC 17025 asks: an interpretation is marked as one.
cooking-is-opinion = The times, amounts and months in this section, and the heating time on page one, are an interpretation: they follow from the line and from the assumptions named here, and were not measured.
cooking-no-line = Without a line nothing can be said about heating times.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, as tested
cooking-not-there = does not get there
cooking-not-there-tends = does not get there; tends to { $temperature }
cooking-may-not-there-tends = may not get there; tends to { $temperature }
cooking-time-range = { $shortest } to { $longest }
cooking-time-open = { $shortest } or more; it may not get there
cooking-boil = { $time } ({ $range })
cooking-foods-title = Food brought to cooking temperature and held there within { $time }
cooking-foods-note = From { $start } at { $irradiance } W/m², in the length of the solar window; never more than the { $load } of the load tested, beyond which the rating says nothing. Specific heats by Chen 1985 from water contents of the ASHRAE Handbook, Refrigeration (both from memory); cooking temperatures and times are common practice, no published source, the { $safe } those of USDA FSIS. Estimated: try it with a thermometer in the food.
cooking-amount-or-more = { $amount } or more
cooking-cooked-at = { $temperature } for { $time }
cooking-amount-range = { $lowest } to { $highest }
cooking-amount-up-to = up to { $highest }; it may not get there
cooking-ends-below = The useful heat ends at a water temperature of { $end } (95 %: { $range }), where the line reaches zero; water boils at { $boiling } here.
cooking-ends-perhaps = Water boils at { $boiling } here, probably before the useful heat ends: the range of that end reaches down to { $lowest }.
cooking-ends-above = Water boils at { $boiling } here, before the useful heat ends.
cooking-no-end = The line does not fall, so it shows no end of the useful heat; water boils at { $boiling } here.
cooking-boils-below-target = Water boils at { $boiling } here, below { $target }; times are to boiling.
cooking-assumed-asked = Steady sunlight of { $irradiance } W/m² in the plane of the irradiance sensor, ambient { $ambient } (as the campaign asks), wind as in the used intervals, the cooker re-aimed as in the test.
cooking-assumed-mean = Steady sunlight of { $irradiance } W/m² in the plane of the irradiance sensor, ambient { $ambient } (mean of the used intervals), wind as in the used intervals, the cooker re-aimed as in the test.
cooking-assumed-load = The load takes up the same power as the load tested; far smaller or larger loads take up less or more, and the heat that the pot itself stores is left out. Below and above the temperatures of the used intervals the line is carried on straight.
cooking-assumed-ranges = Ranges run along the edges of the line's 95 % band, instruments included. They hold for the mean of many heatings, not for a single one under a cloud.
cooking-assumed-water = Water is not food: food heats more slowly, and a lid that is lifted costs many minutes.
food-potatoes = potatoes, in pieces
food-carrots = carrots, in pieces
food-cabbage = cabbage, chopped
food-rice = rice with twice its mass of water
food-eggs = eggs, whole
food-fish = fish (cod)

## Clear days through the year

# What is in brackets is a range: 3.1 MJ (2.9 – 3.3).
year-heat = { $best } MJ ({ $range })
year-water = { $best } L ({ $range })
year-note-heat = Estimated for the 15th of each month under a sky without clouds (Ineichen and Perez 2002), counting the hours with { $irradiance } W/m² or more on the plane normal to the beam; every cloudy or hazy hour takes its part away. Heat: into water { $difference } K warmer than the air; the mean of the months is { $mean } kWh a day. Ambient { $ambient } all year, the cooker aimed all day; in brackets 95 % ranges, from the rating's uncertainty alone.
year-note-water = Water: loads of { $load } one after the other, each from { $start } to { $end } and held for { $time } (Ciochetti and Metcalf 1984, from memory); 1 kg is taken as 1 L. WHO finds that viruses die only slowly between 60 °C and 65 °C: where you can, bring water to a rolling boil, and read the caution on drinking water. For clear water only; heat takes away no poison.
fuel-name = fuel
fuel-heat = heat on a clear day
fuel-heat-text = { $heat } MJ, the mean of the months above
fuel-value = lower heating value
fuel-stove = efficiency of the stove
fuel-days = days in a year
fuel-result = With these assumptions, all of them the tester's, the same heat would take an estimated { $best } kg of { $fuel } in a year ({ $range } kg from the rating's uncertainty alone). It is saved only as far as the fire is really not lit; nothing is promised.
