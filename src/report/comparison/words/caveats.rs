//! What a reader must know before believing a comparison: each once, with the campaigns that it
//! is true of.

use super::calls::Calls;
use crate::campaign::model::{Instrument, IrradianceEstimate, Plane};
use crate::comparison::Comparison;
use crate::comparison::departures::Departure;
use crate::comparison::places::is_one_site;
use crate::language::{Message, Phrase, Words, clauses, joined};
use crate::message;
use crate::procedure::Assessment;
use crate::procedure::finding::Level;
use crate::report::rows::Row;
use crate::units::sentence_case;

/// Days below which the spread of days is hardly known.
const FEW_DAYS: usize = 3;

/// Puts them into words, the gravest first.
pub fn caveats(comparison: &Comparison, calls: &Calls, words: &Words) -> Vec<Row> {
    let caveats = Caveats { comparison, calls };
    // Numbers of campaigns may begin these: "Nos. 4, 5".
    let of_ratings = [
        caveats.not_valid(),
        caveats.unrated(),
        caveats.indicative(),
        caveats.few_days(),
    ];
    let of_ratings = of_ratings.into_iter().flatten();
    let of_ratings = of_ratings.map(|(label, text)| {
        let text = sentence_case(&words.say(text));
        Row::new(&words.say(label), text)
    });
    let all = [
        caveats.limits(),
        caveats.irradiance(),
        caveats.sites(),
        caveats.testers(),
        caveats.sensors(),
    ];
    let all = all.into_iter().flatten();
    let all = all.map(|(label, text)| Row::said(words, label, text));
    of_ratings.chain(all).collect()
}

struct Caveats<'c> {
    comparison: &'c Comparison,
    calls: &'c Calls,
}

type Caveat = Option<(Message, Phrase)>;

impl Caveats<'_> {
    fn places(&self, is: impl Fn(usize) -> bool) -> Vec<usize> {
        let places = self.calls.order().iter().copied();
        places.filter(|place| is(*place)).collect()
    }

    fn campaign(&self, place: usize) -> &Assessment {
        &self.comparison.campaigns[place]
    }

    fn is_ranked(&self, place: usize) -> bool {
        self.comparison.standings[place].valid_power().is_some()
    }

    /// Some campaigns in a sentence; `None` without any.
    fn listed(&self, places: &[usize]) -> Option<Phrase> {
        (!places.is_empty()).then(|| self.calls.listed(places))
    }

    fn not_valid(&self) -> Caveat {
        let campaigns = self.listed(&self.comparison.ranking.not_valid)?;
        let said = message!("caveat-not-valid-text", campaigns = campaigns);
        Some((message!("caveat-not-valid"), said.into()))
    }

    fn unrated(&self) -> Caveat {
        let ranking = &self.comparison.ranking;
        let unrated = Some(&ranking.unrated).filter(|_| !ranking.ranked.is_empty());
        let campaigns = self.listed(unrated?)?;
        let said = message!("caveat-no-rating-text", campaigns = campaigns);
        Some((message!("caveat-no-rating"), said.into()))
    }

    fn indicative(&self) -> Caveat {
        let places = self.places(|place| {
            self.is_ranked(place) && self.comparison.standings[place].level == Level::Indicative
        });
        let said = message!("caveat-indicative-text", campaigns = self.listed(&places)?);
        Some((message!("caveat-indicative"), said.into()))
    }

    fn few_days(&self) -> Caveat {
        let places = self.places(|place| {
            self.is_ranked(place) && self.comparison.standings[place].days < FEW_DAYS
        });
        let said = message!("caveat-few-days-text", campaigns = self.listed(&places)?);
        Some((message!("caveat-few-days"), said.into()))
    }

    /// Other limits than the first campaign's; those that depart alike together.
    fn limits(&self) -> Caveat {
        let departures = &self.comparison.departures;
        let places = self.places(|place| !departures[place].is_empty());
        let groups = grouped(&places, |place| departures[place].clone());
        let of_group = |(departures, places): (Vec<Departure>, Vec<usize>)| {
            message!(
                "caveat-limits-one",
                campaigns = self.calls.listed(&places),
                departures = clauses(departures.iter().map(Departure::in_words))
            )
        };
        let said = message!(
            "caveat-limits-text",
            first = message!("calls-name", name = self.calls.name(0))
        );
        let parts = groups.into_iter().map(of_group).map(Phrase::from);
        let all = [Phrase::from(said)].into_iter().chain(parts);
        (!places.is_empty()).then(|| (message!("caveat-limits"), joined(all, " ")))
    }

    /// Planes and estimates of irradiance, unless it was measured towards the sun everywhere.
    fn irradiance(&self) -> Caveat {
        let ways = grouped(self.calls.order(), |place| Way::of(self.campaign(place)));
        if ways.iter().all(|(way, _)| *way == Way::Normal) {
            return None;
        }
        let is_one = ways.len() == 1;
        let is_uncovered = |way: &Way| matches!(way, Way::Flat | Way::NotStated);
        let is_uncovered = !is_one && ways.iter().any(|(way, _)| is_uncovered(way));
        let uncovered = is_uncovered.then(|| message!("caveat-irradiance-uncovered"));
        let of_way = |(way, places): (Way, Vec<usize>)| match is_one {
            true => message!("caveat-irradiance-all", way = way.describe()),
            false => message!(
                "caveat-irradiance-one",
                way = way.describe(),
                campaigns = self.calls.by_number(&places)
            ),
        };
        let ways: Vec<Message> = ways.into_iter().map(of_way).collect();
        let said = match is_one {
            true => message!("caveat-irradiance-same", ways = clauses(ways)),
            false => message!("caveat-irradiance-text", ways = clauses(ways)),
        };
        let said = joined([said].into_iter().chain(uncovered), " ");
        Some((message!("caveat-irradiance"), said))
    }

    fn sites(&self) -> Caveat {
        let order = self.calls.order();
        let mut sites: Vec<(usize, Vec<usize>)> = Vec::new();
        let site = |place: usize| &self.campaign(place).tested.campaign.site;
        for place in order {
            let known = sites.iter_mut();
            let mut same = known.filter(|(one, _)| is_one_site(site(*one), site(*place)));
            match same.next() {
                Some((_, places)) => places.push(*place),
                None => sites.push((*place, vec![*place])),
            }
        }
        let named = sites.iter().map(|(one, places)| {
            message!(
                "caveat-group",
                name = &site(*one).name,
                campaigns = self.calls.by_number(places)
            )
        });
        let said = message!("caveat-sites-text", sites = clauses(named));
        (sites.len() > 1).then(|| (message!("caveat-sites"), said.into()))
    }

    fn testers(&self) -> Caveat {
        let tester = |place: usize| self.campaign(place).tested.campaign.tester.clone();
        let testers = grouped(self.calls.order(), tester);
        let named = testers.iter().map(|(tester, places)| {
            let name: Phrase = match tester {
                Some(name) => name.into(),
                None => message!("comparison-not-stated").into(),
            };
            message!(
                "caveat-group",
                name = name,
                campaigns = self.calls.by_number(places)
            )
        });
        let said = message!("caveat-testers-text", testers = clauses(named));
        (testers.len() > 1).then(|| (message!("caveat-testers"), said.into()))
    }

    /// Which campaigns have their irradiance from one sensor, by its id.
    fn sensors(&self) -> Caveat {
        let id = |place: usize| {
            let instruments = &self.campaign(place).tested.campaign.instruments;
            let Instrument { id, .. } = &instruments.irradiance;
            id.clone()
        };
        let sensors = grouped(self.calls.order(), id);
        let shared: Vec<_> = sensors
            .iter()
            .filter(|(id, places)| id.is_some() && places.len() > 1)
            .collect();
        if let [(_, places)] = shared.as_slice()
            && places.len() == self.calls.order().len()
        {
            return None;
        }
        let said = match shared.is_empty() {
            true => message!("caveat-sensors-none"),
            false => {
                let named = shared
                    .iter()
                    .map(|(_, places)| self.calls.by_number(places));
                message!("caveat-sensors-text", groups = clauses(named))
            }
        };
        let mut pairs = self.comparison.pairs.iter();
        let mut figures = self.comparison.figures.iter();
        let has_one_sky = pairs.any(|pair| pair.difference.is_one_sky)
            || figures.any(|figures| figures.is_one_sky);
        let of_one_sky = has_one_sky.then(|| message!("caveat-sensors-one-sky"));
        let said = joined([said].into_iter().chain(of_one_sky), " ");
        Some((message!("caveat-sensors"), said))
    }
}

/// Where irradiance is from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Way {
    Normal,
    Flat,
    NotStated,
    Estimated(IrradianceEstimate),
}

impl Way {
    fn of(one: &Assessment) -> Way {
        let instruments = &one.tested.campaign.instruments;
        match (
            instruments.irradiance_estimate,
            instruments.irradiance_plane,
        ) {
            (Some(way), _) => Way::Estimated(way),
            (None, Some(Plane::Normal)) => Way::Normal,
            (None, Some(Plane::Horizontal)) => Way::Flat,
            (None, None) => Way::NotStated,
        }
    }

    fn describe(self) -> Message {
        match self {
            Way::Normal => message!("caveat-way-normal"),
            Way::Flat => message!("caveat-way-flat"),
            Way::NotStated => message!("caveat-way-not-stated"),
            Way::Estimated(way) => message!("caveat-way-estimated", way = way.describe()),
        }
    }
}

/// Places that agree in something, in the order in which they come.
fn grouped<T: PartialEq>(places: &[usize], of: impl Fn(usize) -> T) -> Vec<(T, Vec<usize>)> {
    let mut groups: Vec<(T, Vec<usize>)> = Vec::new();
    for place in places {
        let key = of(*place);
        match groups.iter_mut().find(|(one, _)| *one == key) {
            Some((_, places)) => places.push(*place),
            None => groups.push((key, vec![*place])),
        }
    }
    groups
}
