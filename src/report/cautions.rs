//! The cautions that go with every report. Where sources differ, the cautious value.

use serde::Serialize;

/// Section 7.
#[derive(Debug, Clone, Serialize)]
pub struct CautionPart {
    /// Before all others.
    pub first: &'static str,
    pub cautions: Vec<Caution>,
}

/// One hazard.
#[derive(Debug, Clone, Serialize)]
pub struct Caution {
    pub title: &'static str,
    pub text: &'static str,
    /// Where its numbers come from; empty for common practice without one.
    pub source: &'static str,
}

/// The cautions, the most frequent injury first.
pub fn cautions() -> CautionPart {
    CautionPart {
        first: "Local codes, and the practice of those licensed to work under them, come before anything in this report. The report rates heat; it is no statement on the safety of the cooker or of food.",
        cautions: vec![
            Caution {
                title: "Burns",
                text: "The pot, its lid, the glazing, the grate and steam are hot enough to burn at a touch, long before the water boils: bare metal burns at about 65 °C within a second and at about 51 °C within a minute. Use dry gloves, open the lid away from you, and let the pot stand in the shade before you carry it.",
                source: "ISO 13732-1:2006, values from memory",
            },
            Caution {
                title: "Concentrated light and glare",
                text: "Never look into the focus or at the sun's image in a reflector, and keep your head and hands out of the beam. Dark glasses are not enough near the focus. Turn the reflector away from the sun, or shade it, before you reach for the pot. Mind that it can dazzle neighbours, drivers and passers-by.",
                source: "common practice, no published source",
            },
            Caution {
                title: "Fire",
                text: "A reflector keeps its focus while the sun moves, and so can set light to dry grass, cloth, wood or a wall that it did not face an hour ago. Set it up on bare ground, clear of anything that burns, keep water or sand at hand, and cover the reflector or turn it down when it is not in use, indoors and in storage too.",
                source: "common practice, no published source",
            },
            Caution {
                title: "Never unattended",
                text: "Somebody who knows the hazards stays with the cooker, aims it, and watches the pot. A pot that has boiled dry, a sealed jar or a lid clamped down can burst.",
                source: "common practice, no published source",
            },
            Caution {
                title: "Children and animals",
                text: "Keep children and animals outside a marked line round the cooker. They do not see the focus, and it is at the height of their eyes.",
                source: "common practice, no published source",
            },
            Caution {
                title: "Wind",
                text: "A reflector is a sail. Weigh or tie it down, and put it away before strong wind: when it tips over it spills boiling water and throws its focus somewhere else.",
                source: "common practice, no published source",
            },
            Caution {
                title: "Food safety",
                text: "Bacteria grow between 5 and 60 °C. Food must not stay in that range for more than two hours in all, one hour where the air is above 32 °C; a cooker that heats slowly, or a cloud, can take it past that. Measure inside the food: at least 70 °C all through; 74 °C for poultry and leftovers, 71 °C for minced meat, 63 °C and three minutes' rest for whole cuts. Keep hot food at 60 °C or above. If in doubt, throw it out.",
                source: "WHO, Five Keys to Safer Food; USDA FSIS, safe minimum temperatures and danger zone 40 to 140 °F",
            },
            Caution {
                title: "Drinking water",
                text: "Heat kills germs and removes nothing else. Bacteria die within a minute at 65 °C and above, viruses only slowly between 60 and 65 °C and fast from 70 °C on, so bring all of the water to a rolling boil where you can; 65 °C held for six minutes is what is called pasteurised. Let it cool covered, in the vessel it was heated in.",
                source: "WHO/FWC/WSH/15.02; Ciochetti and Metcalf 1984, Appl. Environ. Microbiol. 47, value from memory",
            },
        ],
    }
}
