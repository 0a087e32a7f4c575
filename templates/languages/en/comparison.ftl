# The comparison of several campaigns, in the order of its pages.
#
# Campaigns are called by letters, A, B, C …, with the cooker's name in brackets behind it
# where they are few: { $first } and { $second } are "A (Box one)" or "A". The difference is
# that of the second from the first.

## Comparison: every page

comparison-kind = Solar cookers compared
# In place of a title that would be too long.
comparison-title-count = { $count } solar cookers compared
# { $sites }: a list of names of places, or comparison-sites. { $dates }: a date, or
# comparison-dates.
comparison-subtitle = { $campaigns } campaigns · { $sites } · { $dates }
comparison-sites = { $count } sites
comparison-dates = { $first } to { $last }
comparison-statement = Results relate only to the cookers as tested. Reproduce only in full.
# At the head of every page.
comparison-mark-mixed = Mixed procedures or limits
comparison-mark-indicative = Indicative in part
comparison-mark-invented = Invented data, for demonstration
comparison-end = End of report { $number }

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } to { $to }
verdict-shown-more = { $second } gives { $difference } W more than { $first } ({ $interval } W): a real difference.
verdict-shown-less = { $second } gives { $difference } W less than { $first } ({ $interval } W): a real difference.
# { $share }: the difference as a part of the rating of the first.
verdict-shown-more-share = { $second } gives { $difference } W more than { $first } ({ $interval } W), { $share } %: a real difference.
verdict-shown-less-share = { $second } gives { $difference } W less than { $first } ({ $interval } W), { $share } %: a real difference.
verdict-one-day-more = { $second } gave { $difference } W more than { $first } ({ $interval } W) when tested, but not on several days each, so the days alone may explain it: test both again on other days.
verdict-one-day-less = { $second } gave { $difference } W less than { $first } ({ $interval } W) when tested, but not on several days each, so the days alone may explain it: test both again on other days.
verdict-by-chance-more = { $second } gives { $difference } W more than { $first } ({ $interval } W), but among { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    } so large a difference also comes by chance: it is not shown.
verdict-by-chance-less = { $second } gives { $difference } W less than { $first } ({ $interval } W), but among { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    } so large a difference also comes by chance: it is not shown.
# One of the sentences that begin with needed- may follow.
verdict-not-shown-more = No difference between { $second } and { $first } could be shown: { $difference } W more, and anything from { $interval } W fits the data.
verdict-not-shown-less = No difference between { $second } and { $first } could be shown: { $difference } W less, and anything from { $interval } W fits the data.
# "One" is a difference, in the next three.
needed-other-days = Test both again on other days.
needed-none = One of { $sought } W would most likely have been seen.
needed-more = { $more ->
        [one] { $more } more used interval
       *[other] { $more } more used intervals
    } of each would most likely show one of { $sought } W.
needed-no-number = More intervals alone would hardly show one of { $sought } W: days, or instruments that are not the same by id, differ by too much.
comparison-in-all = In all { $shown } of { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    } show a real difference; section 1 has every one.

## Comparison: slope or intercept
#
# The line is power against temperature difference: its slope tells of heat lost, its
# intercept of sunlight taken in. { $numbers }: shape-numbers.

shape-unknown = Too few intervals, or none that scatter, to compare slopes.
# Differences of both lines, with their signs and probabilities.
shape-numbers = slope { $slope } W/K, p = { $slope_p }; intercept { $intercept } W, p = { $intercept_p }
# Days, and not intervals, are taken as independent.
shape-numbers-by-days = slope { $slope } W/K, p = { $slope_p }; intercept { $intercept } W, p = { $intercept_p }; by days
# Instruments and single days are not in these tests.
shape-no-cause = As no difference of Ps(50) is shown, no cause of one is named: { $numbers }.
shape-both-less-loss-more-sun = Both differ: { $second } loses less heat for each kelvin than { $first }, as with better insulation; and { $second } takes in more sunlight than { $first }, as after a change of optics ({ $numbers }).
shape-both-less-loss-less-sun = Both differ: { $second } loses less heat for each kelvin than { $first }, as with better insulation; and { $second } takes in less sunlight than { $first }, as after a change of optics ({ $numbers }).
shape-both-more-loss-more-sun = Both differ: { $second } loses more heat for each kelvin than { $first }, as with poorer insulation; and { $second } takes in more sunlight than { $first }, as after a change of optics ({ $numbers }).
shape-both-more-loss-less-sun = Both differ: { $second } loses more heat for each kelvin than { $first }, as with poorer insulation; and { $second } takes in less sunlight than { $first }, as after a change of optics ({ $numbers }).
shape-slopes-less-loss = The slopes differ and the intercepts do not: { $second } loses less heat for each kelvin than { $first }, as with better insulation; optics look alike ({ $numbers }).
shape-slopes-more-loss = The slopes differ and the intercepts do not: { $second } loses more heat for each kelvin than { $first }, as with poorer insulation; optics look alike ({ $numbers }).
shape-levels-more-sun = The lines run alike but not at one height: { $second } takes in more sunlight than { $first }, as after a change of optics; losses look alike ({ $numbers }).
shape-levels-less-sun = The lines run alike but not at one height: { $second } takes in less sunlight than { $first }, as after a change of optics; losses look alike ({ $numbers }).
shape-alike = Neither slopes nor intercepts differ by more than scatter and days explain ({ $numbers }).

## Comparison: what a reader must know first

# { $campaign }: the letter of one.
warning-indicative = { $campaign } is only indicative: a difference from it is no better than its rating.
warning-few-days = { $campaign } was tested on { $days ->
        [one] { $days } day
       *[other] { $days } days
    } only: how much its days differ is hardly known, and its intervals may be too narrow.
# { $departures }: messages that begin with departure-, with ";" between them.
warning-departures = { $campaign } was tested by other limits than A, and is compared all the same: { $departures }.
warning-estimated = The irradiance of { $campaign } is estimated, not measured.
warning-plane = The irradiance of { $campaign } was measured in another plane than that of A; no uncertainty here covers that.
# "The first" is the campaign named first, A.
departure-procedure = procedure { $here } where the first has { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = { $limit } { $here } where the first has { $there }
departure-none = none

## Comparison: the figure

comparison-lines-bands = Lines over the temperature differences that were observed, thin beyond, with 95 % bands of scatter, days and instruments. Errors that cookers share are in every one but cancel in a difference, so two that overlap can still differ.
comparison-lines-bars = Lines over the temperature differences that were observed, thin beyond, with 95 % bars at 50 K of scatter, days and instruments. Errors that cookers share are in every one but cancel in a difference, so two that overlap can still differ.
# Read out to those who do not see the figure. { $lines }: comparison-lines-one of each,
# with ";" between them.
comparison-lines-alt = Lines of standardised cooking power in watts against temperature difference in kelvin. At 50 kelvin: { $lines }.
comparison-lines-one = { $campaign } ({ $name }) { $power } watts, 95 percent { $range } watts

## Comparison: tables of page one

# Headers have little room. a and b: intercept and slope of the line.
ratings-cooker = cooker
ratings-rating = Ps(50), W (95 %)
ratings-intercept = a, W
ratings-slope = b, W/K
ratings-r-squared = R²
ratings-intervals = intervals
ratings-days = days
ratings-conformity = conformity
ratings-conforms = conforms
ratings-conforms-with-notes = conforms with notes
ratings-indicative = indicative only
# The campaign that all others are held against.
ratings-baseline = { $name } (baseline)
# A header: the rating over the area that the cooker turns to the sun.
per-unit-area = W/m² of intercept area
per-unit-mass = W/kg of cooker
per-unit-cost = by cost
# A header: the time for that. { $degrees }: comparison-span with its unit.
per-unit-heating = { $load } from { $degrees }
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
per-unit-of-cost = { $rating } W/{ $currency }
per-unit-no-currency = (currency not stated)
per-unit-note = Ps(50) over area, mass and cost as the campaign files state them, which are taken as exact. Heating times with their 95 % range: 700 W/m², air of { $ambient } for all, the pot's own heat left out.
# Cells: a time with its range.
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – never)
heating-never = does not get there

## Comparison: caution on page one

caution-compared = Hot surfaces and steam burn, the focus can blind and start fires, and these ratings say nothing about food safety. Read the cautions in section 3 before you cook. Local codes and licensed practice come first.

## Comparison: section 1, differences

page-comparison-differences = Differences, and what they rest on
# Headers have little room.
page-comparison-pair = pair
page-comparison-difference = difference of Ps(50)
page-comparison-interval = 95 % interval
page-comparison-p = p
# Probabilities corrected for the number of pairs.
page-comparison-p-corrected = p corrected
# How scatter and days were taken into account.
page-comparison-method = scatter and days
# Whether the difference is real.
page-comparison-verdict = difference
difference-apart = each by its own days
difference-paired = paired by day, { $days ->
        [one] { $days } day
       *[other] { $days } days
    }
difference-real = real
difference-not-shown = not shown
page-comparison-shapes = Slope or intercept: what a change may come from
# { $pair }: "B − A".
pair-budget-title = Uncertainty of { $pair }
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
page-comparison-source = source
page-comparison-shared = in the difference
page-comparison-apart = if nothing were shared
pair-budget-scatter = scatter and days
pair-budget-combined = combined
pair-budget-expanded = expanded, 95 %, k = { $factor }
# Budgets of other pairs.
pair-budget-others = The other { $count } are in the data file.

## Comparison: section 2, the campaigns

page-comparison-campaigns = The campaigns
comparison-campaign-title = { $campaign }: { $name }
# What stands at the left; there is room for 18 letters.
comparison-campaign = campaign
comparison-report = report
comparison-cooker = cooker
comparison-test = test
comparison-line = line
comparison-instruments = instruments
comparison-conformity = conformity
comparison-mass = mass
# { $title }: the tester's own; { $folder }: the name of its folder.
comparison-campaign-text = { $title } ({ $folder })
# { $cooker }: its kind, such as "box cooker"; { $description }: the tester's own words.
comparison-cooker-text = { $cooker }, { $area } m²
comparison-cooker-described = { $cooker }, { $area } m². { $description }
comparison-test-text = { $dates }, { $runs ->
        [one] { $runs } run
       *[other] { $runs } runs
    }; { $site }, { $elevation } m; tested by { $tester }
comparison-not-stated = not stated
comparison-line-text = { $intervals ->
        [one] { $intervals } used interval
       *[other] { $intervals } used intervals
    } at Td from { $range } K
comparison-instrument = { $quantity }: { $instrument }, { $uncertainty }

## Comparison: sections 3 and 4

page-comparison-cautions = Cautions
page-comparison-provenance = Method and provenance
page-comparison-made-with = Made with
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 for each rating; JCGM 100:2008 for the differences
comparison-note-difference = A difference is that of the lines at Td = 50 K. Its uncertainty has the scatter and days of both campaigns, and what their instruments do not share. Instruments are one and the same where the campaign files give one id; those without an id count as different, which makes the uncertainty larger. Specific heat is common to all.
comparison-note-paired = Where both were tested on the same days at one site, and days matter, differences are taken day by day, so that what a day does to both cancels.
comparison-note-p = p is the probability of so large a difference if there is none (Student's t, Welch–Satterthwaite); the corrected p allows for { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    } by Holm's method. A difference is called real where the corrected p is under 0.05.
comparison-note-shapes = Slopes and intercepts are compared by analysis of covariance, from scatter and days alone; where days matter every day has an intercept of its own. Instruments that differ could move both by as much as their uncertainty. Their p are not corrected for the number of pairs.
comparison-note-needed = How many more intervals are needed: for a chance of four in five to show a difference of that size at 95 %, if the spread stays as it was seen.
comparison-note-reports = Each rating has its own report, with its readings, conditions and budget.
