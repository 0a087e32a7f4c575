# English: the language in which everything is written first.
#
# Each message has its name, then what is said. { $name } is put in by the program, as is
# { another-message }; their order may change, all of them have to stay. A count chooses
# between singular and plural, each on a line of its own:
#     { $days ->
#         [one] { $days } day
#        *[other] { $days } days
#     }
# What a template puts in stands in brackets: [page].

## Numbers, dates, lists

decimal-mark = .
# From the lowest to the highest; a unit follows.
ends-of-range = { $low } to { $high }
list = { $first } and { $last }
# Between two clauses of a sentence.
clause-break = { "; " }
date = { $day } { $month } { $year }
month-1 = January
month-2 = February
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = August
month-9 = September
month-10 = October
month-11 = November
month-12 = December

## What is attached to a report, one line each

attached-campaign = Campaign file: what was tested, where, and with what
attached-shared = Keys shared by several campaigns
attached-log = Log, byte for byte as it was read
attached-photo = Photo of the cooker, as it stands in the report
attached-rating = All results as data, in full precision
attached-intervals = One row per interval, used and set aside
attached-comparison = Comparison as data, in full precision
attached-pairs = One row per pair of campaigns
attached-plan = Plan of the day as data
checkable = The data are inside this PDF. Anyone can check it: “simmerline verify FILE”, version { $version }, rebuilds it from them and says whether it is the file that was issued.
checkable-from = The data are inside this PDF. Anyone can check it: “simmerline verify FILE”, version { $version } (from { $address }), rebuilds it from them and says whether it is the file that was issued.
checkable-beside = { $said } Logs of more than { $limit } MB are not inside: keep them beside it, since the check needs them.
checkable-not = This PDF carries no data, so it cannot be checked by itself. It prints the SHA-256 of every input file.
# On the web page.
page-not-checkable = This web page carries no data: only the PDF of this report can be checked.

# The rating: page one, conditions, runs, intervals, the line, tests of the dry vessel.
#
# Standardised cooking power is "Ps", the temperature difference between water and ambient
# "Td", the rating "Ps(50)": symbols stay as they are in every language.

## Counts, each within several of the sentences below
#
# Where a language needs them in another case, write them into the sentence instead.

counted-intervals = { $intervals ->
    [one] { $intervals } interval
   *[other] { $intervals } intervals
}
counted-used = { $intervals ->
    [one] { $intervals } used interval
   *[other] { $intervals } used intervals
}
counted-days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
# Of the line: points less two.
counted-freedom = { $freedom ->
    [one] { $freedom } degree of freedom
   *[other] { $freedom } degrees of freedom
}

## Every page

report-kind = Solar cooker test report
report-kind-indicative = Solar cooker test report: indicative
report-kind-not-valid = Solar cooker test report: not valid
report-kind-no-rating = Solar cooker test report: no rating
report-kind-estimated = Solar cooker test report: indicative, irradiance estimated
# { $title } is the tester's own.
report-title-indicative = { $title } (indicative)
report-title-not-valid = { $title } (not valid)
report-title-no-rating = { $title } (no rating)
report-title-estimated = { $title } (indicative, irradiance estimated)
report-invented = Invented data, for demonstration
report-statement = Results relate only to the cooker as tested. Reproduce only in full.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = irradiance estimated
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Report [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = page [page] of [pages]
letterhead-client = for { $client }
letterhead-client-contact = for { $client }, { $contact }
letterhead-number = Report { $number }
letterhead-issued = issued { $date }
sign-tested = Tested by
sign-authorised = Authorised by
sign-date = Date and signature
letterhead-hashes = SHA-256 of the inputs begin { $hashes } (in full: section { $section }).
letterhead-hashes-more = SHA-256 of the inputs begin { $hashes } and { $more } more (in full: section { $section }).

## Page one: how far the rating conforms

level-conforms = Conforms
level-conforms-with-notes = Conforms with notes
level-indicative = Indicative only
level-not-valid = Not valid
level-no-rating = No rating
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = By ASAE { $procedure }, limits in section { $section }.
headline-conforms-with-notes = By ASAE { $procedure }, limits in section { $section }; the notes are below.
# Below either of the two: what they rest on.
headline-conforms-rests-on = Not verified by anyone: the limits, set down from memory of the standard, and the position of the sensors, which is the tester’s statement.
headline-indicative = Does not conform to ASAE { $procedure }: see the shortcomings below
headline-indicative-missing = Does not conform to ASAE { $procedure }; still missing: { $missing }
headline-indicative-missing-too = Does not conform to ASAE { $procedure }: see the shortcomings. Also missing: { $missing }
headline-not-valid = By these readings the water would gain more heat than the sunlight that falls on the cooker. Check the intercept area, the load and the units.
# { $power }: "55 ± 12 W (not 95 %)".
headline-no-rating-balance = The heat balance gives { $power } at 700 W/m² and 50 K: indicative, not a rating (section { $section }).
headline-no-rating-missing = Not rated by ASAE { $procedure }; still missing: { $missing }
headline-without-rating = Not rated by ASAE { $procedure }: see the shortcomings below
headline-counts = { counted-used } (min. { $least_intervals }) · { counted-days } ({ $least_days }) · R² { $r_squared } ({ $least_r_squared })
headline-counts-no-line = { counted-used } (min. { $least_intervals }) · { counted-days } ({ $least_days })
# What is still missing.
missing-intervals = { $intervals ->
    [one] { $intervals } more interval
   *[other] { $intervals } more intervals
}
missing-days = { $days ->
    [one] { $days } more day
   *[other] { $days } more days
}
missing-intervals-and-days = { missing-intervals } and { missing-days }

## Page one: the number

headline-label = Standardised cooking power Ps(50)
# Beside the number and its ±; 95 % is the level of confidence.
headline-unit = W (95 %)
headline-unit-one-day = W (not 95 %)
headline-what-it-is = Power in the test, scaled to 700 W/m² as ASAE { $procedure } defines it, where water is { $difference } warmer than the air
page-no-rating = no rating
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = irradiance estimated { $way }
headline-horizontal = irradiance measured horizontally, not facing the sun
headline-plane-not-stated = plane of the irradiance sensor not stated
headline-one-day = tested on one day: day-to-day variation is not in the ±
headline-days-not-in-spread = no day can be left out of the fit: day-to-day variation is not in the ±
headline-extrapolated = an extrapolation: 50 K lies outside what was observed
headline-interval = 95 % interval: { $low } to { $high } W
headline-interval-one-day = interval without days, not a 95 % interval: { $low } to { $high } W
fact-delivers = It delivers
fact-took-up = { $power } ± { $half_width } W to water { $difference } above the air in the { $irradiance } W/m² of the test
fact-took-up-estimated = { $power } ± { $half_width } W to water { $difference } above the air in sunlight estimated at { $irradiance } W/m²
fact-lost = no heat: water { $difference } above the air lost { $power } ± { $half_width } W in the { $irradiance } W/m² of the test
fact-scaled = in 700 W/m² { $power } ± { $half_width } W by the heat balance, which scales the gain but not the loss (section { $section })
fact-scaled-loses = a loss of { $power } ± { $half_width } W in 700 W/m² by the heat balance (section { $section })
fact-good = How good
fact-per-area = { $power } ± { $half_width } W per m² of intercept area, { $percent } % of 700 W/m². Published for other cookers, by other methods: { $range } W/m², an order of magnitude only (see { summary-title }).
fact-kitchen = In the kitchen
fact-heats = { $amount } of water { $journey } in about { $time } ({ $range }), in { $irradiance } W/m²
fact-may-not-heat = water may not get { $journey } in { $irradiance } W/m²
fact-does-not-heat = water does not get { $journey } in { $irradiance } W/m²
fact-dry = Empty vessel
fact-sure = How sure
fact-parts = Instruments are { $instruments } % of its square (section { $section }).
fact-parts-assumed = Instruments, some of them assumed, are { $instruments } % of its square (section { $section }).

## Page one: the rating in plain words

headline-two-kilograms = 2 kg
headline-heat-ends = useful heat ends near { $end } ({ $range })
headline-heat-ends-or-boils = useful heat ends near { $end } ({ $range }, where water boils)
headline-boils-first = it still heats at the boil
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = from { $degrees }
journey-degrees = { $start } to { $target }
journey-to-boiling = from { $start } to boiling ({ $boiling } here)
# { $result } as in stagnation-result.
headline-dry = The dry vessel came to { $difference } above the air in { $irradiance } W/m²: { $result } (section { $section }).

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation }; R² = { $r_squared }; { counted-used } on { counted-days }, Td from { $lowest } to { $highest } K
# R² of points that all have the same power.
undefined = undefined
figure-title-falling = Standardised cooking power falls as the water warms: { $equation }, R² { $r_squared }
figure-title-falling-estimated = Standardised cooking power by estimated irradiance falls as the water warms: { $equation }, R² { $r_squared }
figure-title-rising = Standardised cooking power does not fall as the water warms: { $equation }, R² { $r_squared }
figure-title-rising-estimated = Standardised cooking power by estimated irradiance does not fall as the water warms: { $equation }, R² { $r_squared }
figure-title-no-line = No line can be fitted
figure-title-not-valid = Standardised cooking power as the readings give it; not valid, so no line is drawn
# In the figure of page one, beside what they name.
figure-used = { counted-used }
figure-aside = { $count } set aside
figure-aside-most = most often: { $reason } ({ $count })
# Where another reason is as frequent.
figure-aside-among = among them: { $reason } ({ $count })
figure-band-dark = dark: scatter and days
figure-band-light = light: with the instruments (95 %)
# Where no other day tells how days differ.
figure-band-dark-one-day = dark: scatter, without days
figure-band-light-one-day = light: with the instruments; not 95 %
# Read out to those who do not see the figure.
power-line-caption = { $facts }.
power-line-alt = Scatter plot of standardised cooking power in watts against the temperature difference between water and ambient in kelvin. { $facts }; { $aside } set aside. The line reads { $power } watts at 50 kelvin.
power-line-estimated = Irradiance estimated: { $text }
no-line-facts = { counted-used } and { $aside } set aside; no line can be fitted
not-valid-facts = { counted-used } and { $aside } set aside; not valid, so no line is drawn
no-line-alt = Scatter plot of standardised cooking power against temperature difference: { $facts }.
page-findings = Shortcomings, and how to remedy them
# Below those that page one has room for.
page-findings-next = All shortcomings, and how to remedy them, are on the next page.
# Where the rating conforms with notes.
page-findings-notes = Notes, and what would remove them
conditions-title = Conditions: allowed (shaded), observed in the used intervals (bar and numbers), intervals set aside (right)
conditions-track = { $name }: { $observed }, { $count } set aside
brief-irradiance = Irradiance
brief-irradiance-change = Change of irradiance in an interval
brief-wind = Mean wind, and long gusts
brief-ambient = Mean ambient temperature
brief-water-above = Water above ambient, both ends
brief-water-below = Water below boiling, both ends
# { $what }: one of the next or of those above, of irradiance.
brief-estimated = { $what }, estimated
brief-water-lowest = Lowest water temperature
brief-water-highest = Highest water temperature
brief-solar-time = Solar time
page-before-you-cook = Before you cook.
headline-caution = Hot surfaces and steam burn, the focus can blind and start fires, and this rating says nothing about food safety. Read the cautions in section { $section } before you cook. Local codes and licensed practice come first.
headline-caution-no-rating = Hot surfaces and steam burn, the focus can blind and start fires, and these figures say nothing about food safety. Read the cautions in section { $section } before you cook. Local codes and licensed practice come first.
# What others measured, on page two, to hold a rating against.
yardstick-own = Ps(50) per m² of intercept area: { $power } ± { $half_width } W/m², { $percent } % of 700 W/m².
yardstick-parabolic = Published, known from abstracts only: a parabolic cooker, { $value } W/m² (energy efficiency 2.8 to 15.7 %, of 700 W/m²; { $source });
yardstick-box = a box cooker, { $value } W/m² (27 W from 0.408 m² in 750 W/m² and more; { $source }).
yardstick-caution = Neither was rated by ASAE S580.1: they show the order of magnitude and rate nothing.

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = { counted-intervals } used, the standard requires { $least }
finding-too-few-intervals-own = { counted-intervals } used, the campaign’s own limit asks for { $least }
finding-too-few-intervals-remedy = { missing-intervals } that can be used
finding-too-few-days = used intervals on { counted-days }, the standard requires { $least }
finding-too-few-days-own = used intervals on { counted-days }, the campaign’s own limit asks for { $least }
finding-too-few-days-remedy = a test on { missing-days }
finding-no-rating = no line can be fitted: that needs three used intervals with irradiance, at different temperature differences
finding-no-rating-remedy = more intervals that can be used, from ambient to near boiling
# { $shortest }, { $longest }: "9", "11".
finding-no-rating-remedy-intervals = read the water every { $shortest } to { $longest } minutes, or every one, two or five, until it is near boiling
finding-no-rating-remedy-irradiance = measure irradiance; without it power cannot be normalised
finding-r-squared-low = R² is { $r_squared }, below { $least }; the standard asks only for a note; this report withholds conformity
finding-r-squared-low-own = R² is { $r_squared }, below the campaign’s own limit of { $least }
finding-r-squared-low-remedy = steadier aiming, clearer sky and less wind; a sensor that does not touch the pot
finding-r-squared-low-remedy-resolution = a finer water thermometer: its resolution is most of the scatter
# Of a line that its points fit well.
finding-r-squared-low-remedy-flat = R² is low because the power hardly falls with temperature, not because of scatter; judge the figure by its ±; a wider range of water temperature raises R²
finding-line-not-falling = the power does not fall as the water gets hotter, though hotter water loses more heat
finding-line-not-falling-remedy = check that the water temperature is that of the water, and cover a wider range of temperatures
finding-no-useful-heat = the line reads { $power } W at { $difference }: there the water loses heat
finding-no-useful-heat-remedy = check that the readings are of water being heated, with the cooker aimed
finding-extrapolated = { $difference } lies outside the temperature differences observed, { $observed }
finding-extrapolated-remedy = used intervals on both sides of { $difference }
# { $runs }: a list of finding-load-off-run.
finding-load-off = the load is more than { $tolerance } % away from { $load } in { $runs }
finding-load-off-run = { $run } ({ $load })
finding-load-off-remedy = weigh in { $load } of water per m² of intercept area, or correct that area
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = wind was not measured in { $runs }
finding-wind-not-measured-remedy = measure the wind beside the cooker, at its height
finding-wind-estimated = wind was estimated by eye in { $runs }, to one number of the Beaufort scale
finding-irradiance-estimated = irradiance was not measured at the cooker in the plane normal to the beam, but estimated { $way }
finding-irradiance-estimated-remedy = measure irradiance beside the cooker, with a sensor that faces the sun
finding-irradiance-missing = irradiance was not measured in { $runs }, whose intervals cannot be normalised and are not on the line
finding-irradiance-missing-remedy = measure irradiance in the plane normal to the beam
finding-irradiance-horizontal = irradiance was measured in the horizontal plane; the standard requires the plane normal to the beam, in which it is usually higher, so the rating is probably too high
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = mount the sensor so that it faces the sun as the cooker does; until then, the campaign file can ask for its readings to be converted to that plane, an estimate
finding-irradiance-plane-not-stated = the plane of the irradiance sensor is not stated; the standard requires the plane normal to the beam, which is assumed
# plane = "normal" and [instruments.irradiance] are parts of the campaign file and stay as they are.
finding-irradiance-plane-not-stated-remedy = say under [instruments.irradiance] how the sensor was held: plane = "normal" if it faced the sun, plane = "horizontal" if it lay flat
finding-impossible-gain = { counted-used } gained more heat than the sunlight intercepted; the first took { $power } W from { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-gain-estimated = { counted-used } gained more heat than the sunlight intercepted, by more than the uncertainty of the estimated irradiance (± { $percent } %); the first took { $power } W from { $sunlight } W
finding-impossible-gain-remedy = check the mass of water, the intercept area, and the units of temperature and irradiance
finding-impossible-rating = the rating of { $power } W is more than the sunlight that falls on the intercept area at { $irradiance } W/m², { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-rating-estimated = the rating of { $power } W is more than the sunlight that falls on the intercept area at { $irradiance } W/m², { $sunlight } W, by more than the uncertainty of the estimated irradiance (± { $percent } %)
finding-impossible-rating-remedy = check the units of temperature, the intercept area and the load of water
finding-gain-beyond = { counted-used } gained more heat than the irradiance accounts for; the first took { $power } W from { $sunlight } W
finding-gain-beyond-remedy = check the mass of water, the intercept area and the units, and measure irradiance with a sensor that faces the sun
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = own limits looser than a requirement: { $limits }
finding-recommendation-relaxed = own limits looser than a recommendation: { $limits }
finding-limit-tightened = own limits tighter than the standard: { $limits }
finding-guard = a guard band of the expanded uncertainty on every limit (standard: none)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the standard limits something else.
finding-own-limit = { $what } { $value } (standard: { $practice })
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = restore the limits of the standard: delete these under [limits] in the campaign file
finding-excluded-by-tester = { counted-intervals } excluded by the tester
finding-excluded-by-tester-remedy = no action if the recorded reason holds

## What was tested

section-tested = What was tested
page-instruments = Instruments
page-instruments-quantity = quantity
page-instruments-instrument = instrument
page-instruments-uncertainty = uncertainty

## Conditions

section-conditions = Conditions
# Headers of the table.
page-conditions-condition = condition
page-conditions-limit = limit
page-conditions-short-name = short name
page-conditions-standing = standing
page-conditions-observed = observed
page-conditions-set-aside = set aside
# What is limited. Also within findings.
limit-water-above-ambient = water above mean ambient
limit-water-below-boiling = water below local boiling point
limit-water-temperature = water temperature
limit-ambient = mean ambient temperature
limit-irradiance-lowest = lowest irradiance in the interval
limit-irradiance-highest = highest irradiance in the interval
limit-irradiance-change = change of irradiance in the interval
limit-wind-mean = mean wind
limit-wind-gust = wind sustained for over ten minutes (sets the run aside)
limit-solar-time-start = solar time at the start
limit-solar-time-end = solar time at the end
limit-solar-time = solar time
limit-interval = length of an interval
limit-load = water per m² of intercept area
limit-load-tolerance = tolerance of the load
limit-intervals = used intervals
limit-days = days with used intervals
limit-r-squared = R² of the line
# How binding the standard makes a limit: "shall", "should". There is little room.
standing-requirement = requirement
standing-recommendation = recommendation
# The campaign has a limit of its own in place of the standard's.
standing-own-requirement = own (requirement)
standing-own-recommendation = own (recommendation)
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = no line
# Of gusts.
conditions-never = never
conditions-gust = for { $time } at most
# Intervals were formed, and none of them is used.
conditions-none-used = none used
conditions-no-interval = no interval
conditions-not-measured = not measured
conditions-observed = Observed: lowest to highest of all intervals. An interval that fails several conditions is counted under each. Short names: as in the figures and in the table of intervals.
conditions-r-squared = R² below its limit: the standard asks only for a note; this report withholds conformity.
# "Own" as in standing-own-requirement.
conditions-own = Limits marked "own" are the campaign's and deviate from the standard.
conditions-guard = A guard band applies: a value counts as within a limit only if all of its uncertainty interval is, by the decision rule at the end.

## Runs

section-runs = Runs
# How the figures of the runs are read: sentences one after the other.
# Of more runs than are all shown.
runs-shown = There are { $runs } runs, more than { $most }: { $shown } are shown, one in { $step }, the last, and those with the influential intervals named. The others are listed below; the line uses all runs, and { $file } has all intervals. “runs_shown = "all"” under [report] shows every run.
page-runs-others = Runs without a figure
runs-axes = All runs have the same axes.
runs-axes-but-clock = All runs have the same axes, except for the clock.
runs-axes-own-start = All runs have the same axes; each clock starts with its run and spans the same time.
runs-shaded = Shaded: used intervals. Dotted: limits.
runs-wind = Wind: readings thin, means of intervals bold.
runs-no-wind = Wind was not measured.
runs-no-irradiance = Irradiance was not measured.
runs-lanes = Below: intervals not used, by reason, with counts.
runs-aimed = Triangles: re-aimed, by the notes in the log.
runs-predicted = r.m.s.: predicted minus measured water temperature.
run-title = Run { $number }, { $date }
# How many intervals of how many are used: beside the title, as short as can be.
run-used = { $used } of { $of } used
# Clauses below the figure of a run. { $water }: with its unit.
run-load = { $water } of water, { $load }
run-aimed = aimed every { $minutes } min
run-predicted = r.m.s. { $rms } K
# A note of the tester, who alone vouches for it.
run-tester = Tester: { $note }
run-hole = No interval from { $from } to { $to }: no two water readings there are { $shortest } to { $longest } minutes apart.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Panels against local clock time from { $from } to { $to }: water between { $coldest } and { $hottest } degrees Celsius with ambient temperature; { $irradiance }; { $wind }. Used and shaded: { $used } of { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Set aside: { $reasons }.
run-alt-none-aside = Nothing is set aside.
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = Predicted and measured water temperature differ by { $rms } kelvin, root mean square.
run-alt-not-predicted = The line predicts nothing for this run.
run-alt-aimed = Re-aimed { $times } times by the notes in the log.
run-alt-aimed-once = Re-aimed once by the notes in the log.
run-alt-irradiance = irradiance between { $lowest } and { $highest } watts per square metre
run-alt-no-irradiance = irradiance not measured
run-alt-wind = wind between { $lowest } and { $highest } metres per second
run-alt-no-wind = wind not measured

## Intervals

section-intervals = Intervals
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = local time
page-intervals-solar = solar
page-intervals-water = water, °C
page-intervals-ambient = amb., °C
page-intervals-irradiance = irradiance, W/m²
page-intervals-range = lowest–highest
page-intervals-wind = wind, m/s
page-intervals-power = P, W
page-intervals-difference = Td, K
page-intervals-standardised = Ps, W
interval-no-irradiance = not normalised: no irradiance
page-intervals-continued = continued
intervals-shown = Intervals of the { $shown } runs that are shown; all { $intervals } are in { $file }.
intervals-note = Water: at the start and end of the interval. Irradiance: mean, then lowest to highest reading. P: cooking power. Td: mean water minus mean ambient temperature. Ps: P normalised to 700 W/m².
intervals-dots = A dot: the interval is not used, for this reason.
intervals-us = 1 K, as a difference in temperature, is { $fahrenheit } °F.
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = the water was still too close to ambient
reason-water-above-window = the water was too close to boiling
reason-ambient-out-of-range = the air was too cold or too hot
reason-irradiance-low = the sun was too weak
reason-irradiance-high = the sun was too strong
reason-irradiance-unsteady = the sun was unsteady
reason-wind-high = it was too windy
reason-outside-solar-window = it was too early or too late in the solar day
reason-reading-gap = readings were missing
reason-excluded-by-tester = the tester excluded the span
reason-not-cloudless = the tester does not state that the sky was cloudless
# Short names of the same: heads of narrow columns, up to 14 letters each, one word if possible.
lane-water-below-window = cool
lane-water-above-window = hot
lane-ambient-out-of-range = air
lane-irradiance-low = weak
lane-irradiance-high = strong
lane-irradiance-unsteady = unsteady
lane-wind-high = wind
lane-outside-solar-window = hour
lane-reading-gap = gap
lane-excluded-by-tester = excluded
lane-not-cloudless = sky
lane-not-normalised = no irradiance

## Regression and uncertainty

section-regression = Regression and uncertainty
regression-none = No line can be fitted: that needs at least three used intervals with irradiance, at different temperature differences.
regression-method = Ordinary least squares of Ps on Td over the used intervals of all runs, each with equal weight. P = m·c·(T2 − T1)/Δt with c = 4186 J/(kg K) and the actual time; Ps = P·700/G with the interval's mean irradiance G; Td = mean water minus mean ambient temperature. Means are weighted by time.
# Labels, and what stands beside them.
regression-line = line
regression-intercept = intercept a
regression-watts = { $value } W, standard error { $error } W
regression-slope = slope b
regression-watts-per-kelvin = { $value } W/K, standard error { $error } W/K
regression-residual = residuals
regression-residual-text = standard deviation { $deviation } W
regression-points = points
regression-points-text = { counted-intervals } on { counted-days }, { counted-freedom }
residuals-caption = Residuals of the used intervals, by day: against temperature difference, clock time and the quantiles of a normal distribution. Dashed: twice their standard deviation; right, the normal distribution itself.
# Read out to those who do not see the figure.
residuals-alt = Residuals about the line in watts, against temperature difference in kelvin and against local clock time, with a mark for each day; standard deviation { $deviation } watts; { $outside ->
    [one] { $outside } of { $points } points lies further than twice that from the line.
   *[other] { $outside } of { $points } points lie further than twice that from the line.
}
page-scatter = Day effects, autocorrelation, influential points
page-uncertainty = Uncertainty of Ps(50)
# Headers of a table of six columns.
page-uncertainty-source = source
page-uncertainty-of-source = basis
# Type A or B of the GUM.
page-uncertainty-type = type
page-uncertainty-sensitivity = sensitivity
page-uncertainty-of-rating = u, W
page-uncertainty-factor = k
page-uncertainty-part = share of ±²

## Heat balance

section-heat-balance = Heat balance
page-balance-quantity = quantity
balance-what = The water takes up what the cooker gains from the sun less what it loses to the air: P = g·G − u·Td, with the irradiance G and the temperature difference Td. This gives the power at any irradiance. The rating scales the losses with the sun; this does not.
# Above a column of values, where days are not in the ±, so that it is no 95 % range.
balance-spread = ± for 95 %: scatter, days, instruments
balance-spread-one-day = ± without days, not 95 %: scatter, instruments
balance-gain = gain from the sun, g
balance-gain-text = { $value } m²
balance-loss = loss to the air, u
balance-loss-text = { $value } W/K
balance-power = power at 700 W/m² and 50 K, 700·g − 50·u
balance-power-text = { $value } W
balance-ratio = opto-thermal ratio, g/u
balance-ratio-text = { $value } K m²/W
balance-ratio-none = not given: the loss may be zero
acceptance = acceptance half angle
acceptance-text = { $value }° ({ $lower }° to { $upper }°, 95 %)
acceptance-none = not shown
acceptance-rests-on = The acceptance half angle is how far the sun may stand off the axis before a tenth of the gain is lost. It is estimated from the fall of power between the aimings noted in the log: { $stretches } stretches, with the sun up to { $angle }° off the axis. Its range covers scatter, the possible shapes of the fall, and the timing of the notes (common practice).
acceptance-few = No acceptance half angle: { $teeth } stretches between noted aimings qualify, and { $least } are needed, each with at least { $readings } readings of the water and { $angle }° of the sun's movement.
acceptance-few-remedy = Note each aiming in the log, read the water every five minutes or oftener, and let the sun move a few degrees before aiming again.
acceptance-not-shown = No acceptance half angle is shown: over { $teeth } stretches between aimings, with the sun up to { $angle }° off the axis, gain does not fall by more than scatter explains.
acceptance-not-shown-remedy = Leave the cooker unmoved for an hour, twice or more, with the water at a steady temperature under a clear sky: the sun moves about 15° in it. Stay beside it: the focus wanders off the pot, can burn or blind people, and can set things alight.
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = It rests on { counted-intervals } on { counted-days } with sound readings, at { $mean } W/m² on average ({ $range } W/m²). Limits on weather and hour do not apply here; the water window, the tester's exclusions and, where irradiance is estimated, the cloudless sky do.
# Where readings are too far apart for intervals; { $steps }: always several.
balance-rests-on-steps = It rests on { $steps } steps between readings of the water, on { counted-days }, at { $mean } W/m² on average ({ $range } W/m²). Limits on weather and hour do not apply here; the water window, the tester's exclusions and, where irradiance is estimated, the cloudless sky do.
balance-counts-vessels = Gain, loss and power here include the heat capacity of the vessels, { $heat } J/K: { $basis }. The rating and the section on cooking are for the water alone.
balance-scaling-adds = With this loss, scaling in proportion from { $mean } W/m² to 700 W/m² adds { $power } W to Ps(50).
balance-scaling-takes = With this loss, scaling in proportion from { $mean } W/m² to 700 W/m² takes { $power } W from Ps(50).
balance-caption = The band is the budget's; where Monte Carlo reaches further, the table has the wider end.
balance-caption-one-day = The band is without day-to-day variation, so not a 95 % band; it is the budget's, and where Monte Carlo reaches further, the table has the wider end.
# Behind a caption.
balance-beyond = Intervals beyond the edges: { $count }.
# Read out to those who do not see the figure.
balance-alt = Scatter plot of power over irradiance in square metres against temperature difference over irradiance, from { $lowest } to { $highest } kelvin square metres per watt. Dots: { counted-intervals } that the line is fitted to; crosses: the others, { $others }. The line starts at { $gain } square metres, without a temperature difference; the loss is { $loss } watts per kelvin.
# Axes and key of the figure: there is little room.
balance-axis-difference = temperature difference over irradiance, Td/G, K m²/W
balance-axis-power = power over irradiance, P/G, m²
balance-key-used = in the fit ({ $count })
balance-key-others = others ({ $count })
balance-key-line = g − u·Td/G, 95 % band with instruments
balance-key-line-one-day = g − u·Td/G, band without days, with instruments
balance-none-irradiance = Gain and loss cannot be fitted: irradiance was not measured.
balance-none-few = Gain and loss cannot be fitted: that needs at least three intervals with sound readings; found: { $intervals }.
balance-none-alike = Gain and loss cannot be separated: temperature difference and irradiance kept too nearly the same ratio in all intervals.
balance-source = Ordinary least squares of P on G and Td without intercept, each interval with equal weight. After Funk and Larson 1998 (Solar Energy 62, 63–68); not a test by ISO 9806. Opto-thermal ratio: Lahkar, Bhamu and Samdarshi 2012 (Applied Energy 99, 491–495).

## Cooking

section-cooking = What it means for cooking
page-cooking-water = water
# [journey] is put in by the program: "from 20 to 95 °C", the message journey.
page-cooking-time = time [journey]
page-cooking-range = range
page-cooking-boiling = to boiling
page-foods-food = food
page-foods-specific-heat = specific heat
page-foods-cooked = cooked at
page-foods-amount = amount
page-foods-range = range
page-year = Clear days through the year
page-fuel = Fuel replaced
page-dry = Dry vessel
page-dry-date = date
page-dry-plateau = plateau
page-dry-air = air
page-dry-irradiance = irradiance
page-dry-difference = difference per W/m²
page-dry-notes = notes
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimated
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = Highest steady temperature of the empty, dark vessel above ambient, divided by irradiance; ± for 95 %, an oven thermometer within ± 10 K where no uncertainty is stated. It relates heat loss to sunlight and is not a cooking power. Mullick, Kandpal and Saxena 1987 use the ratio for box cookers; for other cookers it compares like with like only. An empty vessel can glow, crack or lose its coating: never leave it.
page-assumed = Assumed

## Cautions

section-cautions = Cautions

## Provenance

section-provenance = Deviations, notes and provenance
page-deviations = Deviations
page-tester-notes = The tester’s notes
page-notices = Notices from reading the logs
page-logs = How the logs were read
page-made-with = Made with
page-sources = What was not checked
# SHA-256: digits that change when a file changes.
page-inputs = Files, with their SHA-256
# A photo among the inputs.
input-photo = { $file }, as it stands in this report
# { $file }: its name, or input-photo.
input-outside = { $file }, from outside the campaign's folder
# A log that is too long to be put inside; { $file }: its name, or input-outside.
input-beside = { $file }, not inside but beside this report ({ $bytes } bytes)
inputs-beside = { $count ->
    [one] { $count } log of more than { $limit } MB is not inside this PDF. Keep it with the PDF, in one folder and under its name: “simmerline verify” needs it, and takes it only if its SHA-256 is the one printed here. “--logs DIR” names another folder. “report --carry-all” puts such a log inside.
   *[other] { $count } logs of more than { $limit } MB are not inside this PDF. Keep them with the PDF, in one folder and under their names: “simmerline verify” needs them, and takes each only if its SHA-256 is the one printed here. “--logs DIR” names another folder. “report --carry-all” puts such logs inside.
}

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = not stated

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Box cooker
cooker-panel = Panel cooker
cooker-concentrating = Concentrating cooker
cooker-tube = Tube cooker
aperture-circle = circle, { $diameter } across
aperture-rectangle = rectangle, { $width } by { $height }
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = regular polygon, { $sides } sides, { $across } across corners
aperture-outline = outline of { $points } points
# { $shape }: one of the four above. The beam is the light that comes straight from the sun.
aperture-off-normal = { $shape }, beam { $degrees }° off its normal

## Ways to estimate irradiance
#
# Each goes on after "irradiance estimated", and also stands alone after a comma.

estimated-clear-sky = by a clear-sky model (Ineichen and Perez 2002)
estimated-from-horizontal = from a sensor that lies flat (Erbs, Klein and Duffie 1982)
estimated-station = from the log of a station nearby
estimated-solar-panel = from the short-circuit current of a solar panel

## Classes of instruments

# Also within budget-assumed and notice-instrument-taken: "assumed a kitchen scale".
class-pyranometer-a = pyranometer of class A
class-pyranometer-b = pyranometer of class B
class-pyranometer-c = pyranometer of class C
class-reference-cell = reference cell
class-solar-panel = solar panel by its short-circuit current
class-hand-held-meter = hand-held meter
class-thermocouple-t-1 = thermocouple type T, class 1
class-thermocouple-t-2 = thermocouple type T, class 2
class-thermocouple-k-1 = thermocouple type K, class 1
class-thermocouple-k-2 = thermocouple type K, class 2
class-thermocouple-j-1 = thermocouple type J, class 1
class-thermocouple-j-2 = thermocouple type J, class 2
class-pt100-a = Pt100, class A
class-pt100-b = Pt100, class B
class-kitchen-thermometer = kitchen thermometer
class-oven-dial = oven dial thermometer
class-measuring-jug = measuring jug
class-platform-scale = platform scale
class-kitchen-scale = kitchen scale
class-watch = watch, read by hand
class-logger = a logger's clock
# What the uncertainty of a class follows from. 95 %: level of confidence.
basis-for-95-percent = ± { $limit } % for 95 %
basis-within-percent = within ± { $limit } %
basis-within-kelvin = within ± { $limit }
basis-within-kelvin-read = within ± { $limit }, read to { $step }
basis-within-seconds = within ± { $limit } s

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
subtitle-cooker = { $cooker }, { $area }
subtitle-site = { $site }, { $elevation }
subtitle-tester = tested by { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = { $first } to { $last }
# "28 September to 3 October 2026".
dates-of-a-year = { $day } { $month } to { $last }
dates = { $first } to { $last }

## What was tested
#
# Labels stand at the left in a column of about 18 letters; longer ones break.

tested-photo = The cooker as tested.
# Read out to those who do not see it.
tested-photo-alt = Photograph of the cooker { $cooker }
tested-cooker = Cooker
tested-name = name
# Mark or serial number of the cooker.
tested-identification = identification
tested-type = type
tested-area = intercept area
tested-aperture = aperture
tested-description = description
# In which condition the cooker was when it was tested.
tested-condition = condition
# When the cooker came to the tester.
tested-received = received
tested-mass = mass
tested-cost = cost
# { $currency }: as the tester wrote it.
tested-cost-text = { $cost } { $currency }
tested-cost-no-currency = { $cost } (currency not stated)
tested-load = Load
tested-water = water
tested-per-area = per intercept area
tested-per-area-text = { $load } (standard: { $practice })
tested-per-area-own = { $load } (own limit: { $own })
tested-vessels = vessels
# Heading: what surrounded the used intervals.
tested-environment = Environment of the used intervals
environment-ambient = ambient
environment-irradiance = irradiance
environment-wind = wind
# A unit follows.
environment-numbers = mean { $mean }, readings { $range }
environment-none = no used interval
tested-site = Site
tested-place = place of test
tested-position = position
tested-position-text = { $latitude }, { $longitude }, { $elevation }
tested-north = { $degrees }° N
tested-south = { $degrees }° S
tested-east = { $degrees }° E
tested-west = { $degrees }° W
# { $boiling }: "95.2 °C".
tested-boiling = water boils at
tested-boiling-by-pressure = { $boiling }, from a measured { $pressure } hPa
tested-boiling-by-elevation = { $boiling }, from the elevation
tested-time-zone = time zone
tested-test = Test
tested-method = method
# The title of the standard stands in English.
tested-method-text = ASAE { $procedure }, testing and reporting solar cooker performance
tested-dates = dates
tested-dates-text = { $dates }, { $runs ->
        [one] { $runs } run
       *[other] { $runs } runs
    }
tested-tracking = tracking
# { $minutes }: a number, or a list of numbers.
tested-tracking-text = re-aimed every { $minutes } min
tested-issued = report issued
# Heading: who answers for the report, for whom it is, and what others contributed.
tested-parties = Laboratory and client
tested-laboratory = laboratory
tested-laboratory-not-stated = name and address not stated
tested-tester = tested by
tested-authorised = authorised by
tested-client = client
tested-contact = contact of the client
# What of the data the client supplied, and not the tester.
tested-client-data = supplied by client
# How the cooker was chosen from among several.
tested-sampling = sampling
tested-not-sampled = not stated; taken as received, not sampled
# Results that somebody else measured.
tested-others = external results
tested-others-station = irradiance, from the log of a station nearby
# As ISO/IEC 17025 asks: what was not established by the test is marked.
tested-stated-note = Data on cooker, load, site, laboratory and client are as stated by the tester and were not verified; errors in them, and in the uncertainties stated, carry into the results. Results apply to the cooker as received.

## What was tested: instruments

tested-water-temperature = water temperature
tested-ambient-temperature = ambient temperature
tested-wind-speed = wind speed
tested-water-mass = mass of water
tested-irradiance-estimated = irradiance, estimated
tested-irradiance-normal = irradiance, normal to the beam
tested-irradiance-horizontal = irradiance, horizontal plane
tested-irradiance-plane-assumed = irradiance, plane not stated, taken as normal to the beam
instrument-not-measured = not measured
# Beside an uncertainty that may be stated or not.
instrument-not-described = not described
# { $description }: the tester's own words; { $id }: a mark or number.
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
instrument-estimated-uncertainty = { $uncertainty }; { $budget }
instrument-uncertainty-of-model = that of the model; { $budget }
# { $budget }: where it stands.
budget-in-section = section { $section }
budget-in-own-report = the budget is in its own report
instrument-by-class = by its class, { $basis }
instrument-by-eye = by eye, Beaufort scale (WMO-No. 8)
instrument-by-eye-uncertainty = the range of a number, such as { $speeds }
uncertainty-percent = { $percent } % of the reading
uncertainty-seconds = { $seconds } s
tested-instruments-note = Standard uncertainties (k = 1), as stated by the tester; “by its class”: limits of the class; section { $section } says what is assumed where neither is stated. The standard asks for the water sensor at the centre, 10 mm above the bottom of the vessel, for wind measured beside the cooker at its height, and for an even load over the vessels; none of this was checked.

## Regression and uncertainty: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = combined
budget-root = root of the sum of squares
# The rating with its expanded uncertainty.
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (not 95 %)
budget-scatter = scatter about the line
budget-scatter-text = { $deviation } W per interval, { $intervals ->
        [one] { $intervals } interval
       *[other] { $intervals } intervals
    }
budget-reading = reading of the water temperature
budget-reading-text = { $deviation } W per interval, { $intervals ->
        [one] { $intervals } interval
       *[other] { $intervals } intervals
    }; more than the scatter observed
budget-days = intervals and days
budget-days-text = { $days ->
    [one] { $days } day, left out
   *[other] each of { $days } days left out in turn
}
budget-per-percent = W per %
budget-per-kelvin = W per K
budget-percent = { $share } %
# Several small lines in one; { $share }: a number.
budget-tiny = others, each under { $share } %
budget-scale = { $percent } % of the distance from { $about } (scale part)
budget-offset-of = { $known } (offset part)
# { $uncertainty }: "0.5 K" or "3 % of the reading".
budget-stated = { $uncertainty }, stated
# { $class }: one of the messages that begin with class-; { $basis }: one that begins with basis-.
budget-class = { $class }: { $basis }
budget-assumed = assumed a { $class }: { $basis }
# What is in error, in the same table, and in the sentences below.
error-irradiance = irradiance
error-clear-sky = irradiance, estimated
# From the horizontal plane to the plane normal to the beam.
error-conversion = irradiance, turned to the sun
# A weather station a few kilometres away.
error-distance = irradiance, at the station
error-water-temperature = water temperature, offset
error-water-scale = water temperature, scale
error-ambient-temperature = ambient temperature, offset
error-ambient-scale = ambient temperature, scale
error-water-mass = water mass
error-specific-heat = specific heat of water
error-clock-rate = time
# What their uncertainty follows from, where it is not the tester's to state.
known-clear-sky = { $percent } %: clear-sky model 5 %, turbidity within ± 2 the rest
known-conversion = conversion { $percent } %, from a beam within a fifth
known-distance = { $percent } % for a station nearby
known-specific-heat = 4186 J/(kg K) within ± { $percent } %
known-clock-rate = rate of the clock within ± { $percent } %
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = common practice
source-wmo-8 = WMO-No. 8, hourly totals, for the classes of ISO 9060:1990 (secondary standard, first, second) that A, B, C of 2018 follow
source-iec-60584 = IEC 60584-1:2013, tolerance up to 100 °C
source-iec-60751 = IEC 60751, tolerance at 100 °C
source-clear-sky = Ineichen and Perez 2002; Reno, Hansen and Stein 2012 (SAND2012-2389); turbidity by common practice
source-conversion = Erbs, Klein and Duffie 1982; Gueymard and Ruiz-Arias 2016
source-specific-heat = IAPWS-IF97, 10 °C to 95 °C

## Regression and uncertainty: what the budget comes to

# { $rating }: rating-with-uncertainty.
budget-result = Ps(50) = { $rating }
budget-result-not-valid = Not valid (page one): the budget below is of the readings alone, which contradict each other.
budget-rule = Interval: the root of the sum of (k·u)². Where a Monte Carlo check (JCGM 101:2008) differs by more than its tolerance, each end is the one further out, and the ± is the longer side. JCGM 100:2008, G.4, takes one k for all lines; with few days that was too narrow in simulations.
budget-note-columns = k: Student's t for scatter and days, 1.96 for instruments. Share: (k·u)² of the line over the sum of all lines; negative where one error partly cancels another. Type A: by statistics of the intervals; B: otherwise.
budget-note-common = Errors of instruments are common to all intervals. Those of irradiance, mass, specific heat and time scale the whole line and never show in its scatter; a constant temperature error cancels in the rise and only shifts Td, an error of scale does both.
budget-note-thermometer = A thermometer's uncertainty u is taken to hold at { $cold } and at { $hot } independently (common practice): an offset of u/√2, and an error of scale about { $about } that is u/√2 at either end. Water and air read by one instrument share both.
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = Sources of what the tester did not state: { $sources }. Limits without more knowledge are taken as rectangular, u = limit/√3 (JCGM 100:2008, 4.3.7).
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = For { $quantities } the campaign file states neither uncertainty nor class, so the most cautious class is assumed. Stating what was used will most likely reduce the uncertainty.
budget-note-resolution = Of the scatter of { $scatter } W per interval, thermometer resolution accounts for { $step } W and reading time for { $moment } W, in quadrature; both are part of it.
budget-note-resolution-most = Of the scatter of { $scatter } W per interval, thermometer resolution accounts for { $step } W and reading time for { $moment } W, in quadrature; both are part of it. Neighbouring intervals share a reading, so most of it cancels along a run; the rest is most of the contribution of scatter and days, and a finer thermometer would reduce it.
budget-note-resolution-beyond = Thermometer resolution alone would cause a scatter of { $step } W per interval, and reading time { $moment } W: together more than the { $scatter } W observed. So the thermometer was read in finer steps than stated or assumed, or its rounding errors happened to cancel. Stating the step in which it was read (resolution_k) may reduce the uncertainty.

## Regression and uncertainty: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = No Monte Carlo check: irradiance is so uncertain that some draws of it fall to zero or below. The interval is then little more than a guess.
drawn-holds = Monte Carlo, { $trials } draws of the same errors through readings, power, regression and line: 95 % of them from { $lower } to { $upper } W, within the tolerance of { $tolerance } W. The interval is the budget's.
drawn-apart = Monte Carlo, { $trials } draws of the same errors through readings, power, regression and line: 95 % of them from { $lower } to { $upper } W. That is up to { $apart } W from the budget's { $from } to { $to } W, beyond the tolerance of { $tolerance } W.
# Why: one of these five follows drawn-apart.
drawn-because-divided = Main cause: power is divided by an irradiance whose standard uncertainty is { $percent } %, so an error to one side moves the rating further than the same error to the other.
drawn-because-curved = Main cause: errors other than that of irradiance do not act in proportion.
drawn-because-limits = Main cause: errors known only by their limits have no tails, which the budget assumes.
drawn-because-few = Main cause: with { $freedom ->
    [one] { $freedom } degree
   *[other] { $freedom } degrees
} of freedom, Student's t and a normal distribution do not combine exactly as a root of squares.
drawn-because-unsettled = Main cause: the draws themselves; with { $freedom ->
    [one] { $freedom } degree
   *[other] { $freedom } degrees
} of freedom their ends settle slowly.
drawn-interval = The interval is therefore { $from } to { $to } W.
drawn-settled-to = The ends of the Monte Carlo interval are known to ± { $within } W.

## Regression and uncertainty: what more data would bring

outlook-at-best = More testing with these instruments cannot reduce the ± below { $least } W.
outlook-reached = The target of ± { $target } W is reached.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = The target of ± { $target } W takes { $more }, assuming the spread seen so far.
outlook-more-one-day = The target of ± { $target } W takes { $more }, assuming the spread seen so far and that days do not differ.
outlook-intervals = { $intervals ->
        [one] { $intervals } more used interval
       *[other] { $intervals } more used intervals
    }
outlook-intervals-and-days = { $intervals ->
        [one] { $intervals } more used interval
       *[other] { $intervals } more used intervals
    } on { $days ->
        [one] { $days } more day
       *[other] { $days } more days
    }
# { $heaviest }: one of the sentences that follow.
outlook-out-of-reach = More intervals cannot reach the target of ± { $target } W: the instruments alone leave ± { $least } W. { $heaviest }
heaviest-irradiance = Irradiance weighs most.
heaviest-clear-sky = The clear-sky estimate of irradiance weighs most.
heaviest-conversion = Turning irradiance to the sun weighs most.
heaviest-distance = Irradiance from a station at a distance weighs most.
heaviest-water-temperature = Water temperature weighs most.
heaviest-water-scale = The scale of the water thermometer weighs most.
heaviest-ambient-temperature = Ambient temperature weighs most.
heaviest-ambient-scale = The scale of the ambient thermometer weighs most.
heaviest-water-mass = Water mass weighs most.
heaviest-specific-heat = Specific heat of water weighs most.
heaviest-clock-rate = Time weighs most.
outlook-too-far = The target of ± { $target } W would take more intervals than anyone measures, assuming the spread seen so far.
outlook-too-far-one-day = The target of ± { $target } W would take more intervals than anyone measures, assuming the spread seen so far and that days do not differ.

## Page one, and regression and uncertainty: what limits the number most

# { $percent }: of the square of the ±.
limits-most-few-days = The largest part of the ± comes from having only { $days ->
    [one] { $days } day
   *[other] { $days } days
} ({ $percent } % of its square).
limits-most-days = The largest part of the ± is day-to-day scatter ({ $percent } % of its square).
limits-most-within-days = The largest part of the ± is scatter within and between days ({ $percent } % of its square).
limits-resolution = Most of the scatter between intervals is from the resolution of the water thermometer.
limits-most-scatter = The largest part of the ± is the scatter of the intervals ({ $percent } % of its square).
limits-most-resolution = The largest part of the ± is scatter ({ $percent } % of its square), most of it from the resolution of the water thermometer.
limits-most-irradiance = The largest part of the ± is the uncertainty of irradiance ({ $percent } % of its square).
limits-most-estimated = The largest part of the ± is the estimate of irradiance ({ $percent } % of its square).
limits-most-water = The largest part of the ± is the uncertainty of the water thermometer ({ $percent } % of its square).
limits-most-ambient = The largest part of the ± is the uncertainty of the ambient thermometer ({ $percent } % of its square).
limits-most-mass = The largest part of the ± is the uncertainty of the water mass ({ $percent } % of its square).
limits-most-other = The largest part of the ± is the specific heat of water and the clock ({ $percent } % of its square).

## Regression and uncertainty: days, neighbours and single intervals

days-one = All used intervals are from one day: how much days differ is unknown and not in the uncertainty. Another day may well read outside the range stated.
days-too-few-intervals = Too few intervals to separate days from scatter; how much days differ is not in the uncertainty.
days-no-scatter = The intervals lie on their days' lines without any scatter, so days cannot be tested.
# Of Fisher's F test: degrees of freedom, the statistic, the probability.
days-test = F({ $between }, { $within }) = { $statistic }, { $p }
# { $numbers }: days-numbers. One of days-left-out and days-left-out-two follows
# after the first three.
days-differ = Days differ by more than the scatter within them explains ({ $numbers }).
days-not-shown = Days differ by no more than the scatter within them explains ({ $numbers }).
days-count = The { $days } days, not the { $intervals } intervals, count as independent observations: each day is left out in turn, which covers differences in level and in slope and leaves { $freedom ->
    [one] { $freedom } degree
   *[other] { $freedom } degrees
} of freedom.
days-count-two = The { $days } days, not the { $intervals } intervals, count as independent observations: each day is left out in turn, with { $freedom ->
    [one] { $freedom } degree
   *[other] { $freedom } degrees
} of freedom. Two days say little about how days differ, so the interval is wide.
days-agree = Leaving out each of the { $days } days in turn gives a narrower interval than the scatter of the intervals, so the scatter is used.
days-cannot-be-left-out = No day can be left out, since the others give no line: the uncertainty rests on the intervals, and day-to-day variation is not in it.
# Durbin–Watson; { $p }: "p = 0.005".
neighbours-drift = Durbin–Watson within runs d = { $statistic } (2: independent), two-sided { $p }: neighbouring intervals err to the same side (positive autocorrelation), as when aim or sky drifts.
neighbours-share = Durbin–Watson within runs d = { $statistic } (2: independent), two-sided { $p }: neighbouring intervals share a water reading, so their errors alternate.
neighbours-by-turns = Durbin–Watson within runs d = { $statistic } (2: independent), two-sided { $p }: errors of neighbouring intervals alternate, by more than the water reading that they share explains, as when every second interval is re-aimed.
neighbours-not-shown = Durbin–Watson within runs d = { $statistic } (2: independent), two-sided { $p }: no autocorrelation shown.
influential = Influential intervals (Cook's distance > 4/n), none removed: { $intervals }.
influential-more = Influential intervals (Cook's distance > 4/n), none removed: { $intervals }; { $more } more.
influential-one = { $date } { $time } ({ $distance }; without it { $power } W)

## Provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = Own limit: { $what } { $limit }.
# guard = true is written in the campaign file and stays as it is.
deviation-guard = Own decision rule: uncertainty counts against every limit, which the standard does not ask for.
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run }: { $from } to { $to } excluded by the tester: { $reason }.
deviation-excluded-no-reason = { $run }: { $from } to { $to } excluded by the tester: no reason given.
deviation-findings = See also the shortcomings or notes at the head of this report.
deviation-interval = Interval length: { $shortest } to { $longest } s are accepted, with power taken over the actual time; the standard asks for { $practice } s.
# Labels stand at the left; there is room for 20 letters.
made-with = program
made-issued = issued
made-practice = standard
made-solar-time = solar time
made-solar-time-text = NREL/TP-560-34302, from time and longitude
made-boiling = boiling point
made-boiling-text = ISO 2533 atmosphere where no pressure was measured, IAPWS-IF97 saturation
# How it is decided whether a limit is met. Titles of standards stay as they are.
made-decision = decision rule
made-decision-text = each observed value is compared with its limit, without allowance for uncertainty; one that equals the limit meets it: simple acceptance, JCGM 106:2012
made-decision-guarded = each observed value is compared with its limit together with its expanded uncertainty (k = { $factor }), and meets it where all of that range is within: irradiance ± { $irradiance } %, water ± { $water }, air ± { $ambient }, a clock time ± { $clock } s, mass of water ± { $mass } %, { $wind }; intercept area, counts and R² without one: guarded acceptance, JCGM 106:2012, 8.3 and ILAC-G8
made-decision-wind = wind ± { $wind }
made-decision-no-wind = wind without one, since its uncertainty is not stated
made-irradiance = irradiance
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimated { $way }; plane normal to the beam after Liu and Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimated { $way }, Linke turbidity { $turbidity } as stated; plane normal to the beam after Liu and Jordan 1963
made-irradiance-usual = estimated { $way }, Linke turbidity { $turbidity } (common practice); plane normal to the beam after Liu and Jordan 1963
# { $works }: messages that begin with memory-, with ";" between them.
unchecked-memory = Quoted from memory, without the text at hand: { $works }. The calculations are tested against published examples and independent recomputation; these values are not. Check any of them on which a decision depends.
unchecked-common = “Common practice” means that no published source is known.
# Titles and names stay as they are.
memory-s580 = ASAE S580.1 (its limits, paraphrased, and its positions of the sensors)
memory-decision = JCGM 106:2012 (decision rule)
memory-decision-guarded = JCGM 106:2012 and ILAC-G8 (decision rule)
memory-iec-60751 = IEC 60751 (tolerance of resistance thermometers)
memory-clear-sky = Reno, Hansen and Stein 2012 (the 5 % of a clear-sky model)
memory-conversion = Gueymard and Ruiz-Arias 2016 (the spread of the beam)
memory-balance = Funk and Larson 1998 (the heat balance; its abstract was seen); Lahkar, Bhamu and Samdarshi 2012 (the opto-thermal ratio)
memory-dry = Mullick, Kandpal and Saxena 1987 (the dry vessel)
memory-box = Mullick, Kandpal and Saxena 1987 and IS 13429 (figures of merit)
memory-dish = Mullick, Kandpal and Kumar 1991 (figures of a dish)
memory-efficiency = Kumar, Vishwanath and Gupta 2012 (peak exergy; its abstract was seen)
memory-food = Chen 1985 and the ASHRAE Handbook, Refrigeration (specific heats of food)
memory-groups = Piepho 2004 (groups by letters)
memory-cautions = ISO 13732-1:2006 (burns); Ciochetti and Metcalf 1984 (pasteurising)
report-end = End of report { $number }

## What it means for cooking

# As ISO/IEC 17025 asks: an interpretation is marked as one.
# { $minutes }: "20".
balance-readings-far-apart = readings are mostly { $minutes } minutes apart, and no interval of the standard fits between them: gain and loss rest on the steps from one reading to the next, and are indicative
balance-readings-far-apart-remedy = read the water every 9 to 11 minutes
balance-one-day = all data are from one day, or no day can be left out of the fit, so the ranges of gain and loss are not 95 % intervals
balance-one-day-remedy = test on other days
# { $range }: "880 to 930".
balance-irradiance-hardly-varied = irradiance hardly varied ({ $range } W/m²): gain and loss are separated by the water temperature alone, and values at another irradiance rest on the model
balance-irradiance-hardly-varied-remedy = test in weaker and in stronger sun
# { $range }: "-0.10 to 0.90".
balance-loss-not-shown = the loss is { $loss } W/K and may be zero ({ $range } W/K)
balance-loss-not-shown-remedy = test over a wider range of water temperatures, and on more days
cooking-opinion = Times, amounts and months in this section, and any heating time at the head of this report, are an interpretation: they follow from the test and the assumptions below, and were not measured.
cooking-no-line = No line was fitted, so no heating times follow.
cooking-not-valid = Withheld: the numbers contradict physics, so nothing follows for heating times, food or months.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, as tested
# Cells of a table of heating times: whether the water gets there.
cooking-no = no
cooking-no-ends = no; heating ends near { $temperature }
cooking-probably-not = probably not
cooking-probably-not-ends = probably not; heating ends near { $temperature }
cooking-time-range = { $shortest } to { $longest }
cooking-time-open = { $shortest } or more, perhaps never
cooking-boil = { $time } ({ $range })
cooking-foods-title = Food brought to cooking temperature and held there within { $time }
cooking-foods-all = Within { $time }, the solar window, each of these foods is brought to its cooking temperature and held there, in the amount of the load tested, { $load }, or more: { $foods }.
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = From { $start } at { $irradiance } W/m², within the solar window; at most the load tested, { $load }, beyond which the test says nothing. Specific heats: Chen 1985, with water contents of the ASHRAE Handbook, Refrigeration. Cooking temperatures and times: common practice; { $safe }: USDA FSIS. Estimated: check with a thermometer in the food.
cooking-amount-or-more = { $amount } or more
cooking-cooked-at = { $temperature } for { $time }
cooking-amount-range = { $lowest } to { $highest }
cooking-amount-up-to = none to { $highest }
cooking-amount-none = none
cooking-amount-probably-none = probably none
cooking-heat-ends = At { $irradiance } W/m² heating ends at a water temperature of { $end } ({ $range }), where the power reaches zero; water boils at { $boiling } here.
cooking-heat-ends-or-boils = It may not bring water to the boil, { $boiling } here: at { $irradiance } W/m² heating ends, by the line, near { $end }, which is uncertain (from { $lowest } to the boil).
cooking-ends-perhaps = Water boils at { $boiling } here, probably while the cooker still heats; within the range of the line, heating may end from { $lowest } upwards.
cooking-ends-above = Water boils at { $boiling } here; the cooker still heats at the boil.
cooking-never-ends = Power does not fall as the water warms, so no end of heating follows; water boils at { $boiling } here.
cooking-light-of-test = Steady irradiance of { $irradiance } W/m² in the plane of the sensor, the mean of the used intervals, at which the line needs no scaling; wind as in the used intervals, the cooker re-aimed as in the test.
cooking-light-asked = Steady irradiance of { $irradiance } W/m² in the plane of the sensor, as the campaign asks, with the power by the heat balance; wind as in the used intervals, the cooker re-aimed as in the test.
cooking-air-mean = Ambient { $ambient }, the mean of the used intervals.
cooking-air-asked = Ambient { $ambient }, as the campaign asks.
cooking-assumed-load = Every load takes up the power of the load tested; far smaller or larger loads take up less or more. Heat stored by the pot is left out. Beyond the temperatures of the used intervals the line is extended straight.
cooking-assumed-edges = Ranges follow the 95 % band of the power, instruments included, and apply to the average of many heatings, not to one.
cooking-assumed-edges-one-day = Ranges follow the band of the power, instruments included; day-to-day variation is not in it, so it is not a 95 % band, and on another day times may lie outside.
cooking-no-months = No monthly estimate: irradiance was measured in the horizontal plane, and the clear-sky model is for the plane facing the sun.
cooking-assumed-water = Water is not food: food heats more slowly, and a lifted lid costs many minutes.
food-potatoes = potatoes, in pieces
food-carrots = carrots, in pieces
food-cabbage = cabbage, chopped
food-rice = rice with twice its mass of water
food-eggs = eggs, whole
food-fish = fish (cod)

## Clear days through the year

year-note-balance = Estimated for the 15th of each month under a clear sky (Ineichen and Perez 2002), counting the hours with { $irradiance } W/m² or more on the plane normal to the beam; cloud and haze reduce it. Heat: by the heat balance, into water { $difference } warmer than the air; the mean of the months is { $mean } kWh a day. Ambient { $ambient } all year, the cooker aimed all day.
year-note-water = Water: loads of { $load }, one after the other, each from { $start } to { $end } and held for { $time } (Ciochetti and Metcalf 1984); { $kilogram } is taken as { $litre }. It begins at { $start }, so the litres do not follow from the heat beside them. WHO finds that viruses die only slowly between 60 °C and 65 °C: where you can, bring water to a rolling boil, and read the caution on drinking water. For clear water only; heat does not remove chemicals.
# { $fewest }, { $most }: year-hours-of.
year-caption = Bars: estimate; whiskers: its range from the uncertainty of the heat balance alone. Hours counted: { $fewest } to { $most }.
year-hours-of = { $hours } ({ $month })
# Names of two panels, about 35 letters each.
year-axis-heat = heat a day, MJ
year-axis-water = water pasteurised a day, { $unit }
# Read out to those who do not see the figure. { $months }: year-alt-month of each, with ";" between.
year-alt = Two bar charts over the months of a year. { $months }.
year-alt-month = { $month }: { $heat } MJ ({ $heats }) a day, { $water } L ({ $waters })
fuel-name = fuel
fuel-heat = heat on a clear day
fuel-heat-text = { $heat } MJ, the mean of the months above
fuel-value = lower heating value
fuel-stove = efficiency of the stove
fuel-days = days in a year
fuel-result = With these assumptions, all of them the tester's, the same heat would take an estimated { $best } of { $fuel } in a year ({ $range } from the rating's uncertainty alone). Fuel is saved only if the fire is really not lit; nothing is promised.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Local codes, and the practice of those licensed to work under them, come before anything in this report. The report rates heat; it is no statement on the safety of the cooker or of food.
caution-governs = { "" }
caution-burns-title = Burns and scalds
caution-burns-text = The pot, its lid, the glazing, the grate and steam are hot enough to burn at a touch, long before the water boils: bare metal burns at about 65 °C within a second and at about 51 °C within a minute. Use dry gloves, open the lid away from you, and shade the cooker and let the pot stand before you carry it. Hot glass cracks when cold water meets it, and a narrow tube can throw its boiling water out.
caution-light-title = Concentrated light and glare
caution-light-text = Never look into the focus, or at the sun or its image in a reflector or panel: no sunglasses make that safe, and dark glasses are not enough near the focus. Keep head and hands out of the beam. Turn the reflector away from the sun, or shade it, before you reach for the pot. Mind that it can dazzle neighbours, drivers and passers-by.
caution-fire-title = Fire
caution-fire-text = A reflector keeps its focus while the sun moves, and so can set light to dry grass, cloth, wood or a wall that it did not face an hour ago. Set it up on bare ground, clear of anything that burns, keep water or sand at hand, and cover the reflector or turn it down when it is not in use, indoors and in storage too. Never put water on burning fat: cover it.
caution-unattended-title = Never unattended
caution-unattended-text = Somebody who knows the hazards stays with the cooker, aims it, and watches the pot. A pot that has boiled dry overheats, cracks or catches fire; a sealed jar or a lid clamped down can burst.
caution-children-title = Children and animals
caution-children-text = Keep children and animals outside a marked line round the cooker. They do not see the focus, and it may be at the height of their eyes.
caution-wind-title = Wind
caution-wind-text = A reflector is a sail. Weigh or tie it down, and put it away before strong wind: when it tips over it spills boiling water and throws its focus somewhere else.
caution-materials-title = Sun, heat and materials
caution-materials-text = Whoever tests stands in the sun for hours: hat, shade, water and breaks. Use no paint, film, adhesive or galvanised metal that gets hot near food or gives off fumes; heat a new cooker once without food, outdoors.
caution-food-title = Food safety
caution-food-text = Bacteria grow fast between 5 °C and 60 °C. Food must not stay in that range for more than two hours in all, one hour where the air is above 32 °C; a cooker that heats slowly, or a cloud, can take it past that, and reheating does not undo what has formed by then. Measure inside the food: at least 74 °C all through. Keep hot food at 60 °C or above. If in doubt, throw it out.
caution-water-title = Drinking water
caution-water-text = Heat kills germs; boiling does not remove chemicals, salt or dirt. Bring all of the water to a rolling boil and keep it boiling for one minute, above { $elevation } for three. Less heat takes longer and is less sure: 65 °C held for six minutes is what is called pasteurised, and viruses die only slowly between 60 °C and 65 °C. Let the water cool covered, in the vessel it was heated in.
caution-sources = Sources. Burns: ISO 13732-1:2006. Food: USDA FSIS, danger zone 40 to 140 °F, two-hour rule and safe minimum temperatures, of which 74 °C, that of poultry and leftovers, is the highest; WHO, Five Keys to Safer Food, 5 °C to 60 °C. Water: US EPA boil-water advice (1 min, 3 min above 5000 ft), as quoted in Emerging Infectious Diseases 31(8), 2025; WHO/FWC/WSH/15.02; Ciochetti and Metcalf 1984, Appl. Environ. Microbiol. 47. All else: common practice.

## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log }: the rows were not in order of time and have been sorted
notice-repeated-times = { $log }: { $rows ->
        [one] { $rows } row
       *[other] { $rows } rows
    } with the time of an earlier row left out; the first is used
notice-rows-left-out = { $log }: { $rows ->
        [one] { $rows } row left out (line { $lines }: { $reason })
       *[other] { $rows } rows left out (lines { $lines }: { $reason })
    }
# { $columns } is a list of notice-unit-assumed.
notice-units-assumed = { $count ->
        [one] no unit is stated for a column, read as { $columns }; state it in the header, or under [units]
       *[other] no unit is stated for columns, read as { $columns }; state it in the header, or under [units]
    }
notice-unit-assumed = "{ $header }" in { $unit }
notice-beyond-calibration = { $log }: { $readings ->
        [one] { $readings } reading
       *[other] { $readings } readings
    } in column "{ $column }" outside its calibration points, extrapolated along the nearest line
notice-quantity-in-both = { $quantity } is in { $log } and in { $weather }; the one beside the cooker is used
notice-weather-in-part = { $weather } covers only part of { $log }; check the clocks of both (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log }: split into { $runs ->
        [one] { $runs } run
       *[other] { $runs } runs
    } by date and gap, each from the run's start to its end; { $parts } and { $readings } left out
notice-log-split-rising = { $log }: split into { $runs ->
        [one] { $runs } run
       *[other] { $runs } runs
    } by date and gap, each from the coldest water to the hottest, where it rises by { $rise } K or more; { $parts } and { $readings } left out
notice-log-parts = { $count ->
        [one] { $count } part
       *[other] { $count } parts
    }
notice-log-readings = { $count ->
        [one] { $count } reading
       *[other] { $count } readings
    }
notice-fault-values = { $log }: { $cells ->
        [one] { $cells } fault value
       *[other] { $cells } fault values
    } in column "{ $column }" taken as missing; check the sensor's wiring
notice-unbelievable = { $readings ->
        [one] { $log }: { $readings } reading in column "{ $column }" cannot be true ({ $values } { $unit }) and is taken as missing; check the sensor
       *[other] { $log }: { $readings } readings in column "{ $column }" cannot be true ({ $values } { $unit }) and are taken as missing; check the sensor
    }
notice-sensors-apart = { $log }: the sensors of { $quantity } are more than { $apart } apart at { $readings ->
        [one] { $readings } time
       *[other] { $readings } times
    }; their mean is used: check that none has failed
notice-sensors-incomplete = { $log }: at { $readings ->
        [one] { $readings } time
       *[other] { $readings } times
    } one of the sensors of { $quantity } has no reading; the mean of the others steps there if they differ
notice-long-run = { $log }: the readings span { $days } days, a run is one heating on one day; check the dates, set start and end, or split = "daily"
notice-above-boiling = { $log }: the water reaches { $highest }, above its boiling point of { $boiling } here; check the sensor, the elevation or the pressure
notice-odd-noon = { $log }: solar noon falls at { $noon } by the clock; check the longitude (east positive) and the time zone
notice-column-not-found = { $log }: no column is understood as { $quantity }, which counts as not measured; not read: { $ignored }; if one of them holds it, name it under [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = read from outside the campaign's folder, as allowed by whoever made this (--allow-outside): { $files }
notice-trimmed = { $log }: { $readings ->
        [one] { $readings } reading
       *[other] { $readings } readings
    } before the run's start or after its end left out
notice-no-intervals = { $log }: no two water readings are { $shortest } to { $longest } minutes apart, so there is no interval; log at steps that add up to { $minutes } minutes
notice-idle-exclusion = { $log }: the excluded span { $from } to { $to } meets no interval; check its times
notice-stall = { $log }: the water gains less than half of what the line says from { $spans }, as under a cloud, though the sky is stated to be cloudless; check your notes, and the aim
# A span of clock times: from 11:20 to 11:40.
notice-span = { $from } to { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = between { $cold } and { $hot }
danger-measured = food safety: in { $run } the water was { $zone } for { $time }; food must not stay { $zone } for more than { $longest } in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove
danger-predicted = food safety: { $predicted }; food must not stay { $zone } for more than { $longest } in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove
danger-both = food safety: in { $run } the water was { $zone } for { $time }, and { $predicted }; food must not stay { $zone } for more than { $longest } in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove
# What the line says, within the sentences above.
danger-expected-never = the load tested is not expected to get to { $hot }
danger-expected = the load tested is expected to take about { $time } to { $hot } ({ $shortest } to { $longest })
danger-expected-open = the load tested is expected to take about { $time } to { $hot } ({ $shortest } or more, or it does not get there)
notice-above-film = at ambient temperature the line takes up { $share } % of the sunlight intercepted, more than a reflective film reflects (86 %; common practice, no published source); check intercept area, mass of water and irradiance
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = uncertainty not stated, so the most cautious instrument is taken: { $taken }; state class or uncertainty under [instruments]
notice-instrument-taken = { $quantity } by a { $class }
notice-date-differs = { $log }: the run's date is given as { $stated }, its readings begin on { $found }; the readings are used
# Slips. { $zone } is a time zone, { $away } and { $near } are kilometres, { $longitude } and { $latitude } degrees.
notice-odd-noon-sign = { $log }: solar noon falls at { $noon } by the clock; with { $longitude } as the longitude it would fall at { $meant }: check the sign of longitude_deg (east positive), else the time zone
notice-odd-noon-exchanged = { $log }: solar noon falls at { $noon } by the clock; with latitude and longitude exchanged it would fall at { $meant }: check whether latitude_deg and longitude_deg are in each other's place, else the time zone
notice-far-from-zone-sign = the site lies { $away } km from the principal place of its time zone { $zone }; with { $longitude } as the longitude it would be within { $near } km: check the sign of longitude_deg (east positive), else the time zone
notice-far-from-zone-exchanged = the site lies { $away } km from the principal place of its time zone { $zone }; at latitude { $latitude } and longitude { $longitude } it would be within { $near } km: check whether latitude_deg and longitude_deg are in each other's place, else the time zone
notice-sun-down = { $log }: { $irradiance } W/m² at { $time } on { $date }, when the sun is below the horizon here; check the logger's clock and its zone (time_zone under [format]), the date, and the coordinates of the site
notice-sun-low = { $log }: { $irradiance } W/m² at { $time } on { $date }, when the sun stands { $elevation }° high here and a cloudless sky gives at most about { $most } W/m²; check the logger's clock and its zone (time_zone under [format]), the coordinates of the site, and the unit of irradiance
notice-heats-at-night = { $log }: the water heats from { $from } to { $to } on { $date }, while the sun is below the horizon here; check the logger's clock and its zone (time_zone under [format]), morning and afternoon, and the coordinates of the site
# { $first } to { $last } are the dates of the other runs.
notice-odd-year = { $log }: its readings are of { $found }, those of the other runs of { $first } to { $last }; if its year is a slip and { $meant } is meant, correct it in the log or set the logger's clock
notice-odd-month = { $log }: its readings are of { $found }, those of the other runs of { $first } to { $last }, and it is listed between them; if its month is a slip and { $meant } is meant, correct it in the log or set the logger's clock
notice-odd-day-and-month = { $log }: its readings are of { $found }, those of the other runs of { $first } to { $last }; if day and month are exchanged and { $meant } is meant, say so by date_order under [format], or correct the date in the log
notice-date-of-name = { $log }: its name says { $named }, its readings are of { $found }; correct whichever is a slip
notice-clock-not-set = { $log }: its readings are of { $found }, from when clocks count that were never set; write the day of the test into the log, and set the logger's clock
notice-in-future = { $log }: its readings are of { $found }, and today is { $issued }; { $runs ->
        [one] check the date in the log, and the clock of this computer
       *[other] in all { $runs } runs lie ahead; check the dates in the logs, and the clock of this computer
    }
notice-odd-run = { $log }: its intervals take up { $share } % of the power that the line of the other { $others } runs says; if the cooker, the load or the columns are not the same, give it a campaign of its own or correct them; if they are, say in its notes what was different
# { $quantity } is a quantity-…; { $time } is a duration.
notice-stuck-sensor = { $log }: { $quantity } is { $value } { $unit } in each of { $readings } readings over { $time }, while others change; check that the sensor was connected and that this is its column; leave the cells blank where nothing was measured
# { $first }, { $highest }: numbers as they stand in the log, without a unit.
notice-celsius-as-fahrenheit = { $log }: this looks like °C: the water in column "{ $column }" begins at { $first }, near the air of { $air }, and ends at { $highest } at most, and as °F it would begin at { $first_c }; if it is in °C, write (°C) behind the header, or correct the unit of the water under [units]
notice-celsius-as-fahrenheit-no-air = { $log }: this looks like °C: the water in column "{ $column }" begins at { $first } and ends at { $highest } at most, and as °F it would begin at { $first_c }; if it is in °C, write (°C) behind the header, or correct the unit of the water under [units]
notice-water-air-exchanged = { $log }: the air rises by { $air } and the water by { $water }; if the columns are exchanged, name each by water_temperature and ambient_temperature under [columns]
# { $runs } is a list of runs; { $water }, { $area } and loads have their units.
notice-load-pounds = { $runs }: { $water } of water on { $area } is { $load }; if the number were pounds, it would be { $meant }, and { $expected } is expected: if it is, convert it (1 lb is 0.4536 kg)
notice-load-square-feet = { $runs }: { $water } of water on { $area } is { $load }; if the area were in square feet, or its lengths in feet, it would be { $meant }, and { $expected } is expected: if so, convert it (1 ft² is 0.0929 m², 1 ft is 0.3048 m)
notice-load-kilograms = { $runs }: { $water } of water on { $area } is { $load }; if kilograms were converted as if they were pounds, it would be { $meant }, and { $expected } is expected: if so, write the kilograms as weighed
notice-load-square-metres = { $runs }: { $water } of water on { $area } is { $load }; if square metres were converted as if they were square feet, it would be { $meant }, and { $expected } is expected: if so, write the square metres as measured

## How the logs were read

quantity-time = time
quantity-date = date
quantity-clock = clock time
quantity-elapsed = elapsed time
quantity-water = water temperature
quantity-vessel = vessel temperature
quantity-ambient = ambient temperature
quantity-irradiance = irradiance
quantity-wind = wind speed
skip-before-header = before the header
skip-units-row = units under the header
skip-between = between header and readings
skip-remark = comment
skip-blank = blank
skip-header-again = header again
skip-before-header-again = before a repeated header
skip-footer = after the last reading
skip-cut-off = cut off at the end of the file
skipped-more = { $lines } and { $more } more
skipped-lines = { $count ->
        [one] line { $lines } skipped ({ $reason })
       *[other] lines { $lines } skipped ({ $reason })
    }
# Labels and texts of a list of facts about a log.
log-form = form
log-form-text = { $written_in }; header on line { $line }; decimal { $mark }
log-time-text = time: { $format }, as in "{ $example }"; zone { $zone }
log-clock = clock
log-clock-text = { $seconds } s added to all times
log-notes = notes: those that say that the cooker was turned to the sun are read
log-not-read = not read
log-readings = { $readings ->
        [one] { $readings } reading from { $from } to { $to }
       *[other] { $readings } readings from { $from } to { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } reading from { $from } to { $to }, mostly one every { $step } s
       *[other] { $readings } readings from { $from } to { $to }, mostly one every { $step } s
    }
# The same once for several logs: a label, and what stands beside it.
log-step = readings
log-step-text = mostly one every { $step } s
# How a column was understood: water temperature (synonym), °C (header).
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }); { $corrections }
# The same where one thing said both.
log-column-one-source = { $quantity }, { $unit } ({ $found_by })
log-column-one-source-corrected = { $quantity }, { $unit } ({ $found_by }); { $corrections }
found-campaign-file = campaign file
found-header = header
found-synonym = synonym
found-elimination = nothing else in a weather log
unit-header = header
unit-units-row = units row
unit-campaign-file = campaign file
unit-cells = cells
unit-assumed = not stated, assumed
corrected-vessel = vessel { $vessel }, { $load }
corrected-sensitivity = sensitivity { $sensitivity } { $unit } per W/m²
corrected-line-plus = calibrated: reading × { $gain } + { $offset } { $unit }
corrected-line-minus = calibrated: reading × { $gain } − { $offset } { $unit }
corrected-points = calibrated by points, { $unit }: { $points }
# How the file is written: what it is, then what separates its cells.
written-sheet = spreadsheet, sheet "{ $sheet }"
written-text = { $encoding }, cells separated by { $delimiter }
written-gzip = gzip, { $encoding }, cells separated by { $delimiter }
encoding-marked = { $name } with byte-order mark
encoding-stated = { $name } (campaign file)
delimiter-comma = comma
delimiter-semicolon = semicolon
delimiter-tab = tab
delimiter-pipe = pipe
delimiter-space = runs of spaces
delimiter-wide-space = runs of two spaces or more
mark-comma = comma
mark-point = point
mark-thousands = { $decimal }, thousands "{ $mark }" (campaign file)
# How times are written: date and time, newest first.
time-newest-first = { $form }, newest first
time-date-and-time = date and time
# { $order } is year-month-day or the like, { $from } one of order-from-….
time-ordered = { $order } ({ $from })
time-clock-only = clock time, the first on { $date }
time-stopwatch = elapsed time from the run's start
time-since-1970 = { $unit } since 1970
time-serial = spreadsheet days since 1899-12-30
time-elapsed = elapsed { $unit } from the run's start
zone-epoch = UTC (since 1970)
zone-start = that of the run's start
zone-offsets = offset in each row
# { $zone } is a name such as Europe/Madrid, { $from } where it stands.
zone-named = { $zone } ({ $from })
zone-local = local
from-header = header
from-units-row = units row
from-line-before = line before the header
from-campaign-file = campaign file
from-site = site
order-only-days = the only order in which every row is a day
# Of dates such as 10.06.2026, and of those such as 10/06/26.
order-points = points stand between day, month and year
order-only-usual = the only usual order in which every row is a day
order-first-row = the first row
order-same-day = the same day in any order
order-only-following = the only order in which day follows on day
order-run-date = the run's date
order-year-month-day = year-month-day
order-day-month-year = day-month-year
order-month-day-year = month-day-year

# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = temperature difference Td, water minus ambient, { $unit }
# Upright, up to 45 letters.
figure-power = standardised cooking power Ps, W
figure-power-estimated = Ps, W, with irradiance estimated
figure-power-short = Ps, W
figure-power-short-estimated = Ps estimated, W
# In an empty figure.
figure-no-interval = no complete interval, so there is nothing to plot
figure-nothing-to-plot = irradiance not measured, so there is nothing to plot
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W at { $at }

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = temperature difference Td, { $unit }
figure-start = local time at the start
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = standard normal quantile
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps minus line, W
figure-band = line with its band, W
# A day in a key.
figure-day = { $day } { $month }

## Figures: a run over the day

# Beside a curve.
figure-water = water
figure-ambient = ambient
figure-aimed = re-aimed
# In the figure of a run, 140 to 480 points wide: as short as can be. { $at }: a temperature with its unit.
figure-boils = boils at { $at }
# Limits on the water temperature. { $margin }: a number of kelvins.
figure-below-boiling = boiling − { $margin }
figure-above-ambient = ambient + { $margin }
# In a panel of irradiance or wind that no instrument measured.
figure-estimated = estimated

# The comparison of several campaigns, in the order of its pages.
#
# { $first } and { $second } are campaigns by their titles, as the testers wrote them, such as
# "Box one, lid open"; where two have one title, with the folder's name in brackets behind it.
# Where there are many, campaigns are called by numbers (calls-numbers). The difference is that of
# the second from the first.

## Comparison: every page

comparison-kind = Solar cookers compared
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = { $cookers ->
        [one] { $campaigns } campaigns of one cooker
       *[other] { $campaigns } campaigns of { $cookers } cookers
    }
# { $sites }: a list of names of places, or comparison-sites. { $dates }: a date, or
# comparison-dates.
comparison-sites = { $count } sites
# In place of a long list of those who tested.
comparison-authors = { $count } testers
comparison-statement = Results relate only to the cookers as tested. Reproduce only in full.
# At the head of every page.
comparison-mark-mixed = Mixed procedures or limits
comparison-mark-not-valid = Not valid in part
comparison-mark-indicative = Indicative in part
comparison-mark-invented = Invented data, for demonstration
comparison-end = End of report { $number }

## The web page that leads to the reports of several campaigns

# { $count }: how many reports it leads to.
index-title = { $count ->
    [one] One solar cooker test report
   *[other] { $count } solar cooker test reports
}
index-subtitle = Written on { $date }
# { $name }: a campaign.
index-invented = { $name } (invented data)
index-some-invented = Some of the data are invented, for demonstration
index-statement = Each result relates only to the cooker as tested.
index-no-rating = None of these campaigns has a rating.
# "compare" is a command.
index-order = The order is that of the numbers and does not say which cooker is better: the campaigns may differ in place, weather, load and instruments. The command “simmerline compare” shows whether the difference between two of them is real.
page-index-reports = Reports and data
index-web-page = report
index-pdf = report as PDF
index-results = results as data
index-intervals = intervals as a table
# { $names }: campaigns, with ";" between them.
index-failed = { $count ->
    [one] No report was written on one campaign
   *[other] No report was written on { $count } campaigns
}: { $names }. The reason was printed on the terminal.
index-caution = Hot surfaces and steam burn, the focus can blind and start fires, and these ratings say nothing about food safety. Read the cautions in the report before you cook. Local codes and licensed practice come first.

## Comparison: what campaigns are called

# A campaign's title within a sentence.
calls-name = “{ $name }”
# Some campaigns by the numbers that they have in the comparison: "2", or "1–4, 7".
calls-numbers = { $count ->
        [one] no. { $numbers }
       *[other] nos. { $numbers }
    }

## Comparison: its title
#
# { $name }, { $first }, { $second }: titles of campaigns. { $power }: verdict-power, or
# verdict-power-indicative. "Gives" is of standardised cooking power at 50 K.

verdict-power = { $power } ± { $half_width } W
verdict-power-indicative = { $power } (indicative only)
verdict-title-only = One rating that holds: { $name }, { $power }
verdict-title-two = { $first } gives { $difference } more than { $second }
verdict-title-two-alike = { $first } and { $second } cannot be told apart
verdict-title-two-untold = Which gives more, { $first } or { $second }, cannot be told
verdict-title-most = { $name } gives most: { $power }
# Some cannot be held against it; or none can.
verdict-title-most-told = { $name } gives most of those that can be compared: { $power }
verdict-title-alone = { $name } has the highest rating, { $power }, but cannot be compared with the others
verdict-title-leads-one = { $name } leads with { $power }, but cannot be told apart from { $second }
# { $others }: at least two.
verdict-title-leads = { $name } leads with { $power }, but { $others } others cannot be told apart from it
# { $second } gives more by the heat balances, which decide where irradiance differed.
verdict-title-beaten-by-one = { $name } has the highest rating, { $power }, but under equal irradiance { $second } gives more
verdict-title-beaten = { $name } has the highest rating, { $power }, but under equal irradiance { $others } others give more
# Counts of those held against the baseline { $name }.
verdict-title-baseline = Against { $name } ({ $power }): { $more } more, { $less } less, { $alike } not told apart
verdict-baseline-unrated = { $name }, the baseline, has no rating that holds, so no ratings are compared.
# Beside a large number, which is { $minuend } less { $subtrahend }.
verdict-lead = { $minuend } minus { $subtrahend }: Ps(50), with its 95 % interval
verdict-lead-one-day = { $minuend } minus { $subtrahend }: Ps(50), with its interval; not tested on several days each, so not a 95 % interval
verdict-lead-common = { $minuend } minus { $subtrahend }: power at 700 W/m² and 50 K by the heat balances, with its 95 % interval
verdict-lead-common-one-day = { $minuend } minus { $subtrahend }: power at 700 W/m² and 50 K by the heat balances, with its interval; not tested on several days each, so not a 95 % interval
# { $pairs }: at least two.
verdict-in-all = Pairs shown to differ: { $shown } of { $pairs }.
# { $pairs }: all of them; { $compared }: the others are counted after it.
verdict-in-all-compared = Pairs shown to differ: { $shown } of { $compared } that can be compared ({ $pairs } in all).
verdict-untold-pairs = { $pairs ->
        [one] One pair
       *[other] { $pairs } pairs
    } cannot be compared: mean irradiance differed, and not both have a heat balance.
verdict-untold-pairs-planes = { $pairs ->
        [one] One pair
       *[other] { $pairs } pairs
    } cannot be compared: irradiance is in another plane for one than for the other.

## Comparison: the ranking
#
# Above its plot; then the headers of its columns, which have little room.

ranking-axis = Ps(50), W, with its 95 % interval
ranking-axis-one-day = Ps(50), W, with its interval
page-ranking-campaign = campaign
# Over letters of groups, of which two campaigns that cannot be told apart have one in common.
page-ranking-groups = not told apart
# On a terminal: a difference with its interval and what it is of.
terminal-lead = { $value } W ({ $interval } W): { $label }
# A header, over ranks.
terminal-rank = no.
# Over cells such as "0.94 · 45 · 4", in two lines.
ranking-rests-on = R², intervals, days
# For each square metre of intercept area, as the campaign files state it.
ranking-per-area = W/m²
# { $currency }: as the tester wrote it.
ranking-per-currency = W/{ $currency }
ranking-per-cost = W per unit of cost
# Headers of a column of differences.
ranking-from-first = no. 1 minus this, W
ranking-from-baseline = from the baseline, W
# Below the ranking.
# What a pair that is shown to differ holds for; with several pairs for all of them.
pairs-together = { $pairs ->
    [one] 95 %
   *[other] 95 % for all { $pairs } comparable pairs together, Holm
}
# After the key of a table of several pairs; its words are those of difference-not-shown.
pairs-note-alone = An interval is of its pair alone, “shown” is of all pairs together: a difference whose interval is without zero may be not shown.
ranking-note-brackets = A bar joins campaigns that cannot be told apart ({ pairs-together }); two that share no bar differ.
ranking-note-brackets-dash = A bar joins campaigns that cannot be told apart ({ pairs-together }); two that share no bar differ, unless one has a dash.
# The same where letters stand in place of bars: on a web page and a terminal.
ranking-note-letters = Campaigns with a letter in common cannot be told apart ({ pairs-together }); two that share no letter differ.
ranking-note-letters-dash = Campaigns with a letter in common cannot be told apart ({ pairs-together }); two that share no letter differ, unless one has a dash.
ranking-note-all-apart = All can be told apart ({ pairs-together }).
# Where some have a dash in place of letters.
ranking-note-rest-apart = All without a dash can be told apart ({ pairs-together }).
# Below the ranking, a list says of each rank from which others it cannot be told apart.
ranking-note-alike = Those from which each campaign cannot be told apart are listed below ({ pairs-together }).
# The same where numbers stand in the ranking itself.
ranking-note-alike-beside = “{ page-ranking-groups }”: the numbers of those from which the campaign cannot be told apart ({ pairs-together }).
# These two follow one of the above.
ranking-note-undecided = Two that cannot be compared count as not told apart.
ranking-note-one-day = Two that were not tested on several days each count as not told apart, however much they differ.
ranking-note-dash = A dash: it can be compared with none of the others, or only with others that have a dash.
ranking-note-not-held = A dash in place of a bar: it can be compared with none of the others, or only with others that have a dash.
ranking-note-not-held-letters = A dash in place of letters: it can be compared with none of the others, or only with others that have a dash.
ranking-note-differences = Differences with their 95 % intervals. Bold: shown ({ pairs-together }). Grey: not shown.
ranking-note-differences-one-day = Differences with their intervals, 95 % unless marked †. Bold: shown ({ pairs-together }). Grey: not shown.
# On a terminal, which has no bold type.
terminal-note-differences = Differences with their 95 % intervals. A question mark before one: not shown ({ pairs-together }).
terminal-note-differences-one-day = Differences with their intervals, 95 % unless marked †. A question mark before one: not shown ({ pairs-together }).
ranking-note-common = *: mean irradiance differed, so the difference is of the powers at 700 W/m² and 50 K by the heat balances.
ranking-note-data = Every pair is in the data file.
page-ranking-continued = continued
# Read out where a campaign has no bar.
page-ranking-alone = differs from every other that it can be compared with
# Read out to those who do not see the plot.
ranking-alt = { $power } W, 95 % interval { $range } W
ranking-alt-one-day = { $power } W, interval without days { $range } W
# What the marks of the plot mean.
ranking-key-filled = Filled: conforms.
ranking-key-open = Open: indicative only.
ranking-key-struck = Struck through: physically impossible, without a rank.
ranking-key-arrow = Arrow: the interval extends beyond the axis.
ranking-key-one-day = Intervals are 95 % intervals, except where “{ status-one-day }” stands.
# { $names }: campaigns, with ";" between them.
ranking-left-out = No rating: { $names }.
# { $level }: one of those that begin with ratings-; { $reasons }: some of the next, in two or
# three words each.
status-for = { $level }: { $reasons }
status-one-day = days not in ±
status-too-few-intervals = too few intervals
status-too-few-days = too few days
status-r-squared-low = low R²
status-line-not-falling = power does not fall as the water warms
status-no-useful-heat = no useful heat at 50 K
status-extrapolated = 50 K not observed
status-load-off = another load
status-wind-not-measured = wind not measured
status-wind-estimated = wind estimated by eye
status-flat = irradiance sensor lay flat
status-irradiance-missing = irradiance missing in some runs
status-plane-not-stated = plane of irradiance not stated
status-impossible-gain = more heat than sunlight
status-own-limits-looser = looser limits
status-own-limits-tighter = tighter limits
status-excluded = time excluded by the tester

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } to { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = The ratings of { $second } and { $first } differ by { $difference } W ({ $interval } W), but { $second } was tested under { $second_sun } W/m² and { $first } under { $first_sun } W/m², and a rating scales losses with the sun: the ratings alone do not show whether the cookers differ.
# In place of all that follows up to verdict-untold, where the plane of irradiance differs.
verdict-planes = The ratings of { $second } and { $first } differ by { $difference } W ({ $interval } W), but irradiance is in another plane for one than for the other, so whether the cookers differ cannot be told.
# The sentence that follows is of that.
verdict-common = The following is for the powers at 700 W/m² and 50 K, by the heat balances.
verdict-untold = Without a heat balance of both, whether the cookers differ cannot be told.
# The sentence that follows is of that.
verdict-shown-more = { $second } gives { $difference } W more than { $first } ({ $interval } W): a real difference.
verdict-shown-less = { $second } gives { $difference } W less than { $first } ({ $interval } W): a real difference.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } gives { $difference } W more than { $first } ({ $interval } W), { $share } %: a real difference.
verdict-shown-less-share = { $second } gives { $difference } W less than { $first } ({ $interval } W), { $share } %: a real difference.
verdict-one-day-more = { $second } gave { $difference } W more than { $first } ({ $interval } W) when tested, but not on several days each, so days alone may explain it: test both again on other days.
verdict-one-day-less = { $second } gave { $difference } W less than { $first } ({ $interval } W) when tested, but not on several days each, so days alone may explain it: test both again on other days.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = { $second } gives { $difference } W more than { $first } ({ $interval } W), but among { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    } so large a difference can arise by chance: it is not shown.
verdict-by-chance-less = { $second } gives { $difference } W less than { $first } ({ $interval } W), but among { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    } so large a difference can arise by chance: it is not shown.
# One of the sentences that begin with needed- may follow.
verdict-not-shown-even = No difference between { $second } and { $first } could be shown. { $second } minus { $first }: anything from { $interval } W fits the data.
verdict-not-shown-more = No difference between { $second } and { $first } could be shown: { $difference } W more, and anything from { $interval } W fits the data.
verdict-not-shown-less = No difference between { $second } and { $first } could be shown: { $difference } W less, and anything from { $interval } W fits the data.
# "One" is a difference, in the next three.
needed-other-days = Test both again on other days.
# Before one of those that begin with needed-, which is of these two.
needed-of = Between “{ $first }” and “{ $second }”:
needed-none = A difference of { $sought } W (a tenth of the larger power) would most likely have been seen.
needed-days = { $days ->
        [one] { $days } more day
       *[other] { $days } more days
    } like those tested, of each, would most likely show a difference of { $sought } W (a tenth of the larger power).
needed-no-number = More days alone would hardly show a difference of { $sought } W (a tenth of the larger power): days, or instruments without a common id, differ too much.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = The cause of a difference cannot be told without a heat balance of both.
cause-untold-planes = The cause of a difference cannot be told, since gains from irradiance in different planes cannot be compared.
# The next six are followed by cause-numbers.
cause-no-difference = No difference is shown, so no cause is named.
cause-not-shown = The cause of the difference is not shown.
cause-more-gain = { $second } takes in more sunlight than { $first }, as after a change of optics.
cause-less-gain = { $second } takes in less sunlight than { $first }, as after a change of optics.
cause-more-loss = { $second } loses more heat per kelvin than { $first }, as with poorer insulation, more wind or a lid left off.
cause-less-loss = { $second } loses less heat per kelvin than { $first }, as with better insulation, less wind or a lid put on.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } minus { $first } by the heat balances: gain { $gain } m² ({ $gain_interval } m²), loss { $loss } W/K ({ $loss_interval } W/K).
# In a cell of the matrix, where the difference is real: what it comes from.
matrix-gain = gain
matrix-loss = loss
matrix-both = gain, loss

## Comparison: the matrix of differences

matrix-title = Differences: row minus column, W
# Read out in place of a cell. { $verdict }: difference-real or difference-not-shown.
matrix-alt = { $value } W, { $interval } W, { $verdict }
matrix-untold = cannot be told
matrix-note = Ps(50), with 95 % intervals. Bold: the difference is shown ({ pairs-together }). Grey: it is not.
matrix-note-one-day = Ps(50), with intervals, 95 % unless marked †. Bold: the difference is shown ({ pairs-together }). Grey: it is not.
# † stands before it.
matrix-note-of-one-day = Not tested on several days each: the interval is not a 95 % interval, and no difference is shown.
# A star stands before it.
matrix-note-common = Mean irradiance differs by more than { $percent } %: the difference is of the powers at 700 W/m² and 50 K by the heat balances.
matrix-note-untold = –: cannot be told: mean irradiance differed, and not both have a heat balance.
matrix-note-untold-planes = –: cannot be told: irradiance is in another plane for one than for the other.
matrix-note-untold-either = –: cannot be told: irradiance is in another plane for one than for the other, or its mean differed and not both have a heat balance.
matrix-note-cause = Gain, loss: the cause of the difference, as far as the heat balances show it (sunlight taken in, heat lost).

## Comparison: lines and heating times

section-lines = Power against temperature difference
lines-caption = Standardised cooking power Ps in W against the water’s temperature above the air in K. In ink: the campaign above the panel, its used intervals, its line over the differences observed with a 95 % band of scatter, days and instruments, and its rating at 50 K. Grey: the others. Errors that campaigns share are in every band but cancel in a difference.
lines-caption-one-day = Standardised cooking power Ps in W against the water’s temperature above the air in K. In ink: the campaign above the panel, its used intervals, its line over the differences observed with a band of scatter, days and instruments (95 %; of one day, without days and not 95 %), and its rating at 50 K. Grey: the others. Errors that campaigns share are in every band but cancel in a difference.
# Read out to those who do not see the panel.
lines-alt = Line Ps = { $intercept } W { $slope } W/K · Td; at 50 K { $power } W, 95 % interval { $range } W
lines-alt-one-day = Line Ps = { $intercept } W { $slope } W/K · Td; at 50 K { $power } W, interval without days { $range } W
# { $shown }: those with most power.
comparison-first-only = The first { $shown } of { $campaigns } are shown; all are in the data file.
section-heating = Heating times
heating-title = { $load } of water from { $start } to { $target } at { $irradiance } W/m²
heating-note = By each campaign’s heat balance at { $irradiance } W/m², in air of { $ambient } for all, with its 95 % range; the pot’s own heat is left out. Arrow: the range extends beyond the axis, or the water may not get there.
heating-note-one-day = By each campaign’s heat balance at { $irradiance } W/m², in air of { $ambient } for all, with its range (95 %, but not of one day); the pot’s own heat is left out. Arrow: the range extends beyond the axis, or the water may not get there.

## Comparison: what a reader must know first

# "The first" is the campaign that was named first.
departure-procedure = procedure { $here } where the first has { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = { $limit } { $here } where the first has { $there }
# The same on paper. { $limit }: one of those that begin with limit-. { $here }, { $there }: with
# their units, or departure-none.
departure-limit-said = { $limit } { $here } instead of { $there }
departure-least-said = { $limit } at least { $here }
departure-most-said = { $limit } at most { $here }
departure-none-said = no limit on { $limit }
departure-procedure-said = procedure { $here } instead of { $there }
departure-guard-said = limits with a guard band
departure-no-guard-said = limits without a guard band
departure-none = none
# What a reader must know first: a label, and what is said. { $campaigns }: one or two titles, or
# calls-numbers.
page-caveats = Before relying on it
caveat-not-valid = Not valid
caveat-not-valid-text = { $campaigns }: the water would gain more heat than the sunlight that falls on the cooker. Check the intercept area, the load and the units. Not ranked, and no difference of ratings is given.
caveat-no-rating = No rating
caveat-no-rating-text = { $campaigns }: only the other figures can be compared.
caveat-indicative = Indicative only
caveat-indicative-text = { $campaigns }. A difference from such a campaign is only as reliable as its rating.
caveat-few-days = Few days
caveat-few-days-text = { $campaigns }: used intervals on one or two days, so how much days differ is hardly known.
caveat-limits = Limits
# { $first }: calls-name of the campaign that was named first. caveat-limits-one of the others
# follow.
caveat-limits-text = Not rated by the same limits as { $first }; compared nevertheless.
# { $departures }: some of departure-…-said, with ";" between them.
caveat-limits-one = { $campaigns }: { $departures }.
caveat-irradiance = Irradiance
# { $ways }: some of caveat-irradiance-one, or one caveat-irradiance-all, with ";" between them.
caveat-irradiance-text = Not measured alike: { $ways }.
# Follows it.
caveat-irradiance-uncovered = The uncertainties here do not cover a sensor that lay flat, or a plane that is not stated.
caveat-irradiance-same = Of all campaigns: { $ways }.
# { $way }: one of the next four.
caveat-irradiance-one = { $way }: { $campaigns }
caveat-irradiance-all = { $way }
caveat-way-normal = sensor facing the sun
caveat-way-flat = sensor lying flat
caveat-way-not-stated = plane not stated, taken as facing the sun
caveat-way-estimated = estimated { $way }
# { $name }: a place or a person.
caveat-group = { $name }: { $campaigns }
caveat-sites = Places
caveat-sites-text = { $sites }. Sky, air and wind were not the same.
caveat-testers = Testers
caveat-testers-text = { $testers }.
caveat-sensors = Sensors
caveat-sensors-none = No two campaigns give one id for the irradiance sensor: no error of irradiance sensors cancels in a difference.
# { $groups }: some of calls-numbers, with ";" between them.
caveat-sensors-text = The same irradiance sensor, by its id: { $groups }. In all other differences no error of irradiance sensors cancels.
# Follows either of the two, where irradiance was estimated.
caveat-sensors-one-sky = Errors of estimates made in the same way, at one site on the same days, cancel nevertheless.

## Comparison: the figure


## Comparison: tables of page one

# Means over the used intervals.
ratings-conforms = conforms
ratings-conforms-with-notes = conforms with notes
ratings-indicative = indicative only
ratings-not-valid = not valid
ratings-no-rating = no rating
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – never)
heating-never = does not get there

## Comparison: caution on page one

caution-compared = Hot surfaces and steam burn, the focus can blind and start fires, and these ratings say nothing about food safety. Read the cautions in section { $section } before you cook. Local codes and licensed practice come first.

## Comparison: differences

section-differences = The difference, and what it rests on
# Labels, with little room.
difference-verdict = difference
difference-p = p
difference-method = scatter and days
# A difference with its 95 % interval, in watts.
difference-with-interval = { $difference } (95 %: { $interval })
difference-with-interval-one-day = { $difference } (not 95 %: { $interval })
# Whether the difference is real.
difference-apart = each by its own days
difference-paired = paired by day, { $days ->
        [one] { $days } day
       *[other] { $days } days
    }
difference-real = real
difference-not-shown = not shown
# In place of real and not shown, where irradiance differed.
difference-scaled = suns differ
# The same where the plane of irradiance differed.
difference-planes = planes differ
difference-of-ratings = Ps(50)
difference-of-common = power at 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = Uncertainty of the difference: { $figure }
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
page-comparison-source = source
page-comparison-shared = in the difference
page-comparison-apart = if nothing were shared
pair-budget-scatter = scatter and days
pair-budget-combined = combined
pair-budget-expanded = expanded, 95 %, k = { $factor }
pair-budget-expanded-one-day = expanded, without days, not 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = The campaigns
# Comparison: its tables of campaigns. Rows of facts that are the same of all campaigns, and
# headers of narrow columns.
page-campaigns-alike = The same in all campaigns
campaigns-type = type
campaigns-tests = Cookers and tests
campaigns-area = intercept area
campaigns-mass = mass
campaigns-cost = cost
campaigns-dates = tested
campaigns-runs = runs
campaigns-place = place
campaigns-tester = tested by
campaigns-report = report
campaigns-results = Lines, heat balances, conditions
# a and b are symbols; Ps and Td too.
campaigns-line = Line Ps = a − b·Td
campaigns-intercept = a, W
campaigns-slope = b, W/K
campaigns-range = from – to
campaigns-r-squared = R²
campaigns-intervals = intervals
campaigns-days = days
campaigns-balance = Heat balance, with ±
campaigns-gain = gain, m²
campaigns-loss = loss, W/K
campaigns-power = W at 700 W/m², 50 K
campaigns-around = Means of the used intervals
campaigns-sun = W/m²
campaigns-air = air
campaigns-wind = wind
# Below or in place of a table of instruments.
campaigns-instruments-described = A row is a description, which may fit several instruments: only with an id in brackets is it one and the same in all its campaigns.
campaigns-instruments-many = { $count } instruments in all: each stands in the report of its campaign.
# In a column of campaigns: every one.
campaigns-all = All
comparison-not-stated = not stated

## Comparison: method and provenance

section-method = Method and provenance
page-comparison-made-with = Made with
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 for each rating; JCGM 100:2008 for the differences
comparison-note-ratings = Each rating is that of the standard: Ps(50), read off the line at Td = 50 K. It scales power in proportion to 700 W/m², losses too. Where the mean irradiance of both tests is alike, the difference that is called real or not shown is that of the ratings.
comparison-note-suns = Where mean irradiance differs by more than { $percent } %, it is the difference of the powers at 700 W/m² and 50 K by the heat balances. A heat balance is P = g·G − u·Td, fitted to every interval with sound readings. It takes gain g and loss u to be the same under both suns; no wind is corrected for.
comparison-note-planes = Where irradiance is in another plane for one than for the other, no difference is called real or not shown: neither ratings nor gains per W/m² are then comparable.
comparison-note-uncertainty = The uncertainty of a difference covers the scatter and days of both campaigns, each by leaving out one day at a time, and the instrument errors that they do not share. Instruments are the same where the campaign files give one id; those without an id count as different, which makes the uncertainty larger. The error of an irradiance estimate is one where both were estimated in the same way, at one site on the same days. Specific heat is common to all.
comparison-note-paired = Where both were tested on the same days at one site, on three days or more, each day is left out of both at once, so that what a day does to both cancels: here in { $paired } of { $pairs ->
        [one] { $pairs } pair
       *[other] { $pairs } pairs
    }.
comparison-note-p = p is the probability of so large a difference if there is none (Student's t, Cochran & Cox); the corrected p allows for { $pairs ->
        [one] { $pairs } pair that can be compared,
       *[other] { $pairs } pairs that can be compared,
    } by Holm's method. Both are of the difference that decides: of the ratings, or of the powers at 700 W/m². A difference is called real where the corrected p is under 0.05 and both were tested on several days.
comparison-note-groups = Campaigns that cannot be told apart need not be alike: the first may not differ from the second nor the second from the third, while the first and the third do. Groups are those of the compact letter display (Piepho 2004, Journal of Computational and Graphical Statistics 13, 456–466): of campaigns that can be compared, directly or through others, two have one in common exactly if they cannot be told apart, cannot be compared, or were not tested on several days each.
comparison-note-causes = Causes follow from the differences of g and u, each with scatter, days and instruments. A cause is named where a difference is real and p of g or u is under 0.05; these p are not corrected for the number of pairs.
comparison-note-needed = Days still needed: for a chance of four in five to show a difference of that size at 95 %, if days and scatter stay as observed.
comparison-note-reports = Each rating has its own report, with its readings, conditions and budget.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
plan-day = { $weekday } { $date }
# On the terminal; { $day }: plan-day, { $title }: the campaign's.
plan-title = { $day }: { $title }
plan-title-none = { $day }: no time of this day can be used, so there is no field sheet. { $title }
# Labels of lines on the terminal, and headers of its table of the sun: there is little room.
plan-run = run
plan-lacks = missing
plan-place = place
plan-place-text = { $site }, clock of { $zone }
plan-elevation = elevation, °
plan-azimuth = azimuth, °
plan-normal = normal, W/m²
plan-horizontal = horizontal, W/m²
plan-range = 95 %, { $unit }
plan-range-one-day = range, { $unit }
plan-power = power, W
plan-not-rated = planned as for a first day, since the logs cannot be rated yet
weekday-1 = Monday
weekday-2 = Tuesday
weekday-3 = Wednesday
weekday-4 = Thursday
weekday-5 = Friday
weekday-6 = Saturday
weekday-7 = Sunday
# { $zone }: the name of a time zone, such as Europe/Madrid.
sheet-subtitle = { $day } · { $site } · clock of { $zone }
sheet-mark = Invented data, for demonstration

## Field sheet: sun, water, aiming
#
# What stands at the left has room for 13 letters, else it goes onto two lines.

plan-sun = sun
plan-sun-course = rises { $rise }, solar noon { $noon }, sets { $set }
plan-sun-no-rise = does not rise, solar noon { $noon }, sets { $set }
plan-sun-no-set = rises { $rise }, solar noon { $noon }, does not set
plan-sun-neither = does not rise, solar noon { $noon }, does not set
plan-sun-always = does not set; solar noon { $noon }
plan-sun-never = does not rise
# The hours about noon in which the standard lets one test.
plan-window = solar window
plan-window-text = { $clocks } by the clock ({ $from } to { $to } solar time)
# Two times of day.
plan-clocks = { $from } to { $to }
plan-clear-sky = clear sky
# plan-too-much may follow, after a semicolon.
plan-enough-all-through = { $least } W/m² or more on the plane normal to the beam from { $clocks }, so all through the solar window
plan-enough-in-window = { $least } W/m² or more on the plane normal to the beam from { $clocks }, in the solar window from { $usable }
plan-too-much = beyond { $most } W/m² intervals are set aside too, and a very clear sky here gives up to { $highest }
plan-enough-outside = { $least } W/m² only from { $clocks }, outside the solar window: no interval of this day can be used
plan-never-enough = never reaches { $least } W/m² (at most { $highest }): no interval of this day can be used
plan-water = water
# { $load }, { $each }, { $vessel }: masses with their unit. plan-load-stated may follow, after
# a semicolon.
plan-load-one = { $load }: { $each } per m² of intercept area ({ $area }), in one vessel
plan-load-several = { $load }: { $each } per m² of intercept area ({ $area }), { $vessel } in each of { $vessels } vessels
plan-load-stated = the campaign file says { $stated }
# From and up to which temperature of the water its readings count.
plan-start = counts from
plan-start-above = { $difference } above the air, such as { $start } in air of { $air }
plan-stop = counts up to
plan-stop-text = { $stop }; water boils at { $boiling } here
# In the unit of the tester's thermometer, with °C or K in brackets.
plan-temperature = { $temperature } { $unit } ({ $celsius } °C)
plan-difference = { $difference } { $unit } ({ $kelvin } K)
# A run of the dry vessel, or of a load that cools: when it begins, what is read, when it ends.
plan-begin = begin
plan-read = read
plan-end = end
plan-high-sun = high sun
# { $clocks }: two times of day. { $from }, { $to }: the same by the sun.
plan-high-sun-text = { $clocks } by the clock ({ $from } to { $to } solar time), when the sun is high and changes least; common practice, no published source
plan-high-sun-most = up to { $highest } W/m² on the plane normal to the beam
plan-high-sun-weak = at most { $highest } W/m² on the plane normal to the beam: a plateau counts only above { $least } W/m², so choose another day for it
plan-high-sun-none = at most { $highest } W/m² on the plane normal to the beam: no time of this day will do
plan-dry-begin = with the empty, dry vessel as cold as the air, its lid on, aimed
plan-dry-read = the vessel every 5 to 20 min, the air at least every second time, until the vessel has stayed the same for half an hour; for an hour with a dial in steps of 10 °F or 5 °C
plan-dry-read-sun = the vessel and the irradiance every 5 to 20 min, the air at least every second time, until the vessel has stayed the same for half an hour; for an hour with a dial in steps of 10 °F or 5 °C
plan-cooling-load = as much as in the heating runs, { $load }
plan-cooling-load-unstated = as much as in the heating runs; weigh it
plan-cooling-begin = with the water near boiling (it boils at { $boiling } here), the lid on, the cooker in the shade or turned away from the sun
plan-cooling-read = the water every { $minutes } min, the air at least every second time; irradiance is not needed
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = when the water is { $difference } above the air, such as { $end } in air of { $air }
# To turn the cooker to the sun.
plan-aim = aim
plan-aim-unknown = the acceptance half angle is not stated, so no times are given. Common practice, no published source: a shallow many-sided reflector about every 45 minutes, in which the sun moves about 11°, a sharp dish every 10 to 15.
plan-aim-no-time = no time of this day can be used
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = at { $clocks } only: { $angle }° is enough for the whole window
plan-aim-drive = all the time, by a drive: the sun moves { $angle }° in under { $time }
plan-aim-at = at { $clocks }; the sun moves { $angle }°, the acceptance half angle, in that time ({ $minutes } min)
plan-aim-every = every { $minutes } min from { $first }; the sun moves { $angle }°, the acceptance half angle, in that time
plan-aim-shown = { $when }. The angle is not stated: it is the lower end of what the runs so far show, { $shown }

## Field sheet: what is missing

# Two of these follow each other. { $missing }: "9 more intervals and 1 more day".
plan-missing = Still missing: { $missing }.
plan-missing-nothing = Intervals and days are enough already.
plan-gives-none = This day can give none.
plan-gives = This day can give { $most ->
        [one] { $most } interval of { $minutes } min
       *[other] { $most } intervals of { $minutes } min
    } at most.
plan-gives-by-heating = This day can give { $most ->
        [one] { $most } interval of { $minutes } min
       *[other] { $most } intervals of { $minutes } min
    } at most; one heating of this load gives about { $heating }, then start again with fresh water.

## Field sheet: before the first reading

check-shade = no shade on the cooker until the end
check-wind = wind light: smoke drifts, leaves still
check-weighed = water weighed, not poured by the cup
check-sensor = sensor in the water, 10 mm above the bottom, off the wall
check-lid = lid on, and it stays on
check-air = air thermometer in the shade, out of the cooker's light
check-irradiance = irradiance sensor clean and facing the sun
check-irradiance-flat = irradiance sensor clean and lying flat, beside the cooker
check-aimed = aimed, and nothing that burns near the focus
check-empty = vessel empty, dry and clean: no water, food or fat in it
check-no-plastic = no plastic and no non-stick coating on it: it gets far above 100 °C
check-dial = thermometer in or on the vessel, out of the beam; it stays there
check-mirrors = mirrors of the box covered or folded away, for its figures of merit
check-no-sun = no sun on the cooker until the end: shaded, or turned away
check-in-place = pot in its place in the cooker, as when it heats
# Lines to write on.
sheet-tester = tester
sheet-weighed = water weighed, { $unit }
sheet-began = first reading, clock time

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = clock
sheet-after = minutes
sheet-vessel = vessel, { $unit }
sheet-water = water, { $unit }
sheet-air = air, { $unit }
# Bft: Beaufort.
sheet-wind = wind, Bft
sheet-sky = sky: clear or cloud
sheet-irradiance = irradiance, W/m²
sheet-expected = expected, { $unit }
sheet-aim = aim
sheet-notes = notes

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Wind by eye, Beaufort (WMO-No. 8): { $forces }.
sheet-force = { $number } { $sign } ({ $speeds })
# What one sees of the wind on land, at each number of the Beaufort scale.
wind-sign-0 = smoke rises straight up
wind-sign-1 = smoke drifts, vanes stay still
wind-sign-2 = felt on the face, leaves rustle
wind-sign-3 = leaves and small twigs keep moving
wind-sign-4 = dust and loose paper rise
wind-sign-5 = small trees sway
wind-sign-6 = large branches move
wind-sign-7 = whole trees move
wind-sign-8 = twigs break off
# What the column of expected temperatures rests on. { $start }, { $air }: temperatures.
# { $spread }: "95 %", or plan-spread-one-day.
plan-expected = Expected of the cooker as rated so far, Ps(50) = { $power } W ± { $expanded } W ({ $spread }): { $load } heated from { $start } under a clear sky, in air of { $air } as in its tests; with its range. Water well below that suggests haze, wind, a wrong aim or a loose lid.
plan-spread = 95 %
plan-spread-one-day = not 95 %
# The models behind the numbers.
plan-models = Clear sky after Ineichen and Perez 2002 for { $elevation }, Linke turbidity { $turbidity } (usual for a clear sky); haze and dust give less. Sun after NREL/TP-560-34302; a level horizon.
plan-models-stated = Clear sky after Ineichen and Perez 2002 for { $elevation }, Linke turbidity { $turbidity } (as stated); haze and dust give less. Sun after NREL/TP-560-34302; a level horizon.
page-sheet-checks = Before the first reading
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = To write down at each time
page-sheet-caution = Caution.
caution-field-sheet = Never look into the focus or at the sun. Hot metal and steam burn: gloves, lid away from you. Keep away children and all that burns; stay with the cooker; turn it from the sun before you reach in; tie it down against wind. Shade and water for yourself. Throw the test water away. Local codes and licensed practice come first.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = A dry vessel gets far above 100 °C: it burns at a touch, and stays hot long after. Plastic melts and coatings give off fumes: keep both out. Never pour water into it while it is hot: it spits and cracks. Dry grass, cloth and grease left on the ground catch fire: bare ground, water or sand at hand, and somebody who stays. Never look into the focus or at the sun; turn the cooker from it before you reach in; dry gloves. Keep children away; tie it down against wind. Shade and water for yourself. Local codes and licensed practice come first.
caution-field-sheet-cooling = A pot of water near boiling is carried: clear the way, nobody in it, the lid held on, both hands in dry gloves; set it down rather than hurry. Steam burns: lid away from you. Never look into the focus or at the sun; turn the cooker from it, or shade it, before you reach in, and mind where the focus goes then. Keep children away; stay with the cooker. Throw the test water away. Local codes and licensed practice come first.

## Kinds of run, and what vessels store

run-kind-water = heating water
run-kind-cooling = cooling, shaded
run-kind-dry = dry vessel
vessel-heat-stated = stated in the campaign file
vessel-heat-weighed = { $mass } of { $material } at { $heat } J/(kg K) (EN 12524:2000, as an open library carries it)
material-aluminium = aluminium
material-cast-iron = cast iron
material-steel = steel
material-stainless-steel = stainless steel
material-copper = copper
material-glass = glass
material-ceramic = ceramic
material-fired-clay = fired clay
tested-vessel-heat = heat capacity of the vessels
tested-vessel-heat-text = { $heat } J/K: { $basis }
tested-loss-area = surface of the vessels that loses heat
tested-no-water = none: no run of this campaign heats water
tested-vessel-temperature = vessel temperature
error-vessel-temperature = vessel thermometer
error-vessel-heat = heat capacity of the vessels
known-vessel-heat = within { $percent } % of the stated value
budget-not-told-apart = not given separately in this report
tested-instruments-note-dry = Standard uncertainties (k = 1); for a class, its limits. Where neither is stated, the most cautious class is assumed: an oven dial within ± 10 K for the vessel (common practice).

## Page one of a campaign that heats no water

report-kind-without-water = Report on tests of a solar cooker without a rating
headline-label-none = No figure yet
headline-no-water = No rating by ASAE S580.1: no run of this campaign heats water.
headline-spread = Interval for 95 %: days, readings, instruments.
headline-spread-one-day = Interval without days: readings, instruments; not 95 %.
headline-dry-plateau = In { $irradiance } W/m² the empty vessel came to { $vessel }: { $difference } above the air of { $ambient }.
fact-reached = It reached
fact-good-for = Good for
fact-not-with = Not to be compared with
headline-no-water-means = None of this is a cooking power. Heat a weighed load of water to learn how fast the cooker cooks.
headline-nothing-drawn = Nothing could be drawn: the shortcomings say why.

## All figures at a glance (page two)

summary-title = All figures at a glance
# Headers of a table of four columns.
page-summary-figure = figure
page-summary-value = value ± half width
page-summary-good-for = good for
page-summary-not-with = not to be compared with
summary-one-day = (not 95 %)
summary-indicative = (indicative)
summary-note = Each ± is for 95 %: days, readings (with their scatter where a line is fitted), and instruments with the uncertainty that is stated or assumed. Areas count as exact.
# The same where figures without days are among them; the next message follows it.
summary-note-some = Each ± is for 95 %, unless "not 95 %" stands beside it: days, readings (with their scatter where a line is fitted), and instruments with the uncertainty that is stated or assumed. Areas count as exact.
summary-note-one-day = Where "not 95 %" stands, day-to-day variation is not in the ±, so it is not for 95 %.
summary-note-indicative = Where "indicative" stands, the conditions of the procedure were not met, or irradiance is estimated.
figure-ps50 = standardised cooking power
figure-ps50-good-for = comparing cookers rated by the same standard
figure-ps50-not-with = power at another irradiance, or ratings by another standard
figure-gain = gain from the sun
figure-gain-good-for = power at any irradiance, with u
figure-gain-not-with = gain by a sensor in another plane
figure-loss = loss to the air
figure-loss-good-for = seeing what insulation does
figure-loss-not-with = loss in another wind, or per m²
figure-opto-thermal-ratio = opto-thermal ratio
figure-opto-thermal-ratio-good-for = how hot a load can get, whatever its size
figure-opto-thermal-ratio-not-with = F1, which is of the empty cooker
figure-dry-difference = dry vessel above the air, per W/m²
figure-dry-difference-good-for = comparing versions of one cooker with the same pot
figure-dry-difference-not-with = other pots, or a sensor in another plane; it is no cooking power
figure-f1 = first figure of merit
figure-f1-good-for = comparing box cookers, empty
figure-f1-not-with = values by a sensor that faces the sun, or with mirrors uncovered
figure-f2 = second figure of merit
figure-f2-good-for = comparing box cookers at full load
figure-f2-not-with = other loads or other ends of the rise
figure-box-boiling = time to boil from ambient
figure-box-boiling-good-for = saying how long this load takes, in this sun
figure-box-boiling-not-with = times for another load, sun or altitude
figure-time-constant = time constant of cooling
figure-time-constant-good-for = how long this load stays hot in the shade
figure-time-constant-not-with = other loads: it grows with the water
figure-loss-factor = loss factor
figure-loss-factor-good-for = comparing vessels and their wraps
figure-loss-factor-not-with = factors for another surface, or in another wind
figure-optical-factor = optical factor
figure-optical-factor-good-for = comparing mirrors and aim
figure-optical-factor-not-with = factors by beam irradiance, where this is global
figure-dish-boiling = time to boil from ambient
figure-dish-boiling-good-for = saying how long this load takes, in this sun
figure-dish-boiling-not-with = times for another load, sun or altitude
figure-energy = energy efficiency
figure-energy-good-for = comparing tests over the same range of water temperatures
figure-energy-not-with = efficiency over another range, or with a cold load
figure-exergy = exergy efficiency
figure-exergy-good-for = as energy, with hot water counting more
figure-exergy-not-with = values by another temperature of the sun or range
figure-peak-exergy = peak exergy
figure-peak-exergy-good-for = comparing cookers of one size under the same sun
figure-peak-exergy-not-with = peaks in another irradiance
figure-quality-factor = quality factor
figure-quality-factor-good-for = comparing gain and loss at the peak
figure-quality-factor-not-with = papers that define the loss differently

## Procedures beside the rating

procedure-label = { $name }, { $symbol }
# { $value } with its ±, or alone; { $unit }, or nothing.
procedure-value = { $value } { $unit }
# An interval that reaches further on one side.
procedure-value-between = { $value } ({ $lower } to { $upper })
procedure-value-alone = { $value } (± not given)
procedure-spread = ± for 95 %: days, readings, instruments
procedure-spread-one-day = ± without days, not 95 %: readings, instruments
page-procedure-quantity = quantity
procedure-boiling = The time to boil is for { $load } of water from { $ambient } to { $boiling }, its boiling point here, in a steady { $irradiance } W/m²: the means of the test. It is calculated, not timed.
# { $limit }, °C.
evaporation = above { $limit } part of the heat goes into vapour, which no temperature shows: the figures hold for a closed lid and count the vapour as loss
evaporation-remedy = keep the lid on; compare only tests that end at like temperatures

## Dry vessel

section-dry-vessel = Dry vessel
dry-what = An empty, dark vessel or bare plate is left in the sun until it gets no hotter. Its temperature above the air, per W/m², relates sunlight gained to heat lost. It is no cooking power.
dry-plane-normal = Irradiance is that of a sensor that faced the sun.
dry-plane-horizontal = Irradiance is that of a sensor that lay flat: compare only with others that did.
dry-plane-estimated = Irradiance is estimated.
dry-plane-not-stated = The plane of the irradiance sensor is not stated: compare with no other value.
# { $runs }: more than one.
dry-mean-of = The value is the mean of { $runs ->
    [one] { $runs } run
   *[other] { $runs } runs
} with a plateau.
# Headers of a table with a row a run: there is little room.
dry-head-run = run
dry-head-plateau = plateau, { $unit }
dry-head-ambient = air, { $unit }
dry-head-irradiance = sun, W/m²
dry-head-difference = K m²/W
dry-head-initial = first rise, K/min
dry-head-reached = min to { $level }
dry-caption = Temperature of the dry vessel since the start of each run; thick: the plateau.
dry-alt = Line plot of the temperature of the dry vessel against time, for { $runs ->
    [one] { $runs } run
   *[other] { $runs } runs
}. The highest reading is { $highest }.
dry-axis-time = time since the first reading, min
dry-axis-vessel = vessel, { $unit }
dry-key-vessel = readings
dry-key-plateau = plateau
dry-source = Plateau, this project's reading: the hottest stretch of at least ten minutes, longer for a coarse dial, in which the vessel rises or falls by less than 0.1 K/min, and the sun stays within ± 20 W/m² and above 600 W/m². The ratio is the one Mullick, Kandpal and Saxena 1987 use for box cookers. First rise: over the first ten minutes, or the first two readings.
dry-no-vessel = the log has no temperature of the vessel
dry-no-vessel-remedy = name the vessel's column as vessel_temperature under [columns]; if the vessel held water, write kind = "water"
dry-no-irradiance = the log has no irradiance, so the plateau cannot be related to it
dry-no-irradiance-remedy = note the irradiance with each reading, or state cloudless spans and estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = the readings that count do not cover { $minutes } min without a gap, which a plateau needs with this thermometer
dry-too-short-remedy = go on reading, at least every twenty minutes, until the temperature has stayed for { $minutes } min
dry-sun-unsteady = the sun never stayed within ± 20 W/m² of its mean for { $minutes } min
dry-sun-unsteady-remedy = test under a clear sky around solar noon
dry-sun-weak = the sun was steady, but with at most { $highest } W/m², below 600 W/m²
dry-sun-weak-remedy = test around solar noon, in a brighter season, or without haze
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = no plateau: in its hottest steady stretch, at { $vessel }, the vessel still rose by { $rate } K/min
dry-still-falls = no plateau: in its hottest steady stretch, at { $vessel }, the vessel fell by { $rate } K/min
dry-still-moves-remedy = start earlier, aim again, and go on until it stays

## Box cooker

section-box-cooker = Figures of merit of a box cooker
box-what = F1 = (Tp − Ta)/H: temperature of the empty box above the air, per W/m² on the horizontal. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))]: how well its heat gets into a full load, from the time τ in which the water rises by ΔT; T, Ta and H are means over that time.
box-grade = grade
box-grade-a = A: the whole range of F1 is above { $limit } K m²/W (IS 13429)
box-grade-none = none: the range of F1 is not wholly above { $limit } K m²/W, the limit of grade A (IS 13429); lower grades are not evaluated
box-rests-on-dry = F1 rests on { $runs ->
    [one] { $runs } dry run
   *[other] { $runs } dry runs
} with a plateau.
box-rests-on-water = F2 rests on { $runs ->
    [one] { $runs } rise
   *[other] { $runs } rises
} of the water from { $from } to { $to }.
box-caption = Water over the time since it passed the first temperature of the rise; thick: what F1 and F2 give in a steady sun of the same mean.
box-alt = Line plot of the water's temperature against time, for { $runs ->
    [one] { $runs } rise
   *[other] { $runs } rises
} from { $from } to { $to }, with the curves that F1 and F2 give.
box-axis-time = time since the start of the rise, min
box-axis-water = water, { $unit }
box-key-water = readings
box-key-told = by F1 and F2
box-source = Mullick, Kandpal and Saxena 1987 (Solar Energy 39, 353–360) and IS 13429. They write F2 with the logarithm of both ends: the same in a steady sun, and up to 2 % off in one that changes by a tenth, more where F1·H is close to the end of the rise (simulated). They take boiling at 100 °C, this report at the local boiling point. No pass mark for F2 is given: two are quoted, and they disagree.
box-no-dry-run = there is no dry run, so no F1, and no F2 that rests on it
box-no-dry-run-remedy = leave the empty box in the sun around noon and log its plate: kind = "dry"
box-no-plateau = no dry run has a plateau, so there is no F1, and no F2
box-no-plateau-remedy = see what the dry runs lack
box-plane-normal = irradiance was measured facing the sun; F1 and F2 are defined for a sensor that lies flat
box-plane-not-stated = the plane of the irradiance sensor is not stated; F1 and F2 are defined for a sensor that lies flat
box-plane-estimated = irradiance is estimated; F1 and F2 are defined for a sensor that lies flat
box-plane-remedy = lay the sensor flat beside the box, and state plane = "horizontal"
box-cover-mirrors = F1 and F2 are for a box whose booster mirrors, if it has any, are covered; no log shows that
box-cover-mirrors-remedy = cover them in these runs, and say so in the notes
box-no-water-run = no run heats water, so there is no F2
box-no-heating = no rise from { $from } to { $to } °C with irradiance and without a gap in { $runs ->
    [one] { $runs } run
   *[other] { $runs } runs
} of water, so there is no F2
box-no-heating-remedy = begin below { $from }, go on above { $to }, and read at least every twenty minutes
box-runs-left-out = runs of water without a whole rise from { $from } to { $to } °C, not used: { $runs }
# Loads in kg/m².
box-load-off = the load was { $load }; a full load is about { $full }
box-load-off-remedy = weigh in { $full } kg of water per m² of glass; the rating asks for 7 kg per m² of intercept area, so one load does not always meet both
# Both in K.
box-beyond-reach = in { $rises -> 
    [one] { $rises } rise
   *[other] { $rises } rises
} the water got { $end } above the air, more than this F1 allows: F1·H is { $reach } there. Such a rise is not used
box-no-upper-end = F1·H is { $reach }, so close to the { $end } above the air that the water reached that the range of F2 has no upper end
box-near-reach = the water reached { $end } above the air, close to F1·H, { $reach }: 1 % less F1 makes F2 { $more } % higher
box-reach-remedy = test in a stronger sun, or end the rise lower
box-one-day = dry runs or rises are from one day, so the ranges are not 95 % intervals
box-one-day-remedy = test on other days

## Concentrating cooker

section-dish = Cooling and heating test
dish-what = In the shade the temperature of the load above the air decays with the time constant τ0; its heat loss is C/τ0, with the heat capacity C of water and vessels. F′UL is that loss per m² of the vessels' surface. In the sun, F′η0 is the fraction of the light on the intercept area that the load absorbs, losses not deducted.
dish-loss = loss to the air by cooling, F′UL·At
dish-rests-on-cooling = The loss rests on { $runs ->
    [one] { $runs } cooling run
   *[other] { $runs } cooling runs
}, from { $from } down to { $to }.
dish-rests-on-vessels = The heat capacity of the vessels is included, { $heat } J/K: { $basis }.
dish-rests-on-heating = The optical factor rests on { $runs ->
    [one] { $runs } heating
   *[other] { $runs } heatings
}, each from { $margin } above the air to { $margin } below boiling, as far as it goes.
dish-caption = Water above the mean air temperature since the start of each cooling run; thick: what its time constant gives in steady air.
dish-alt = Line plot of the water's temperature above the air against time, for { $runs ->
    [one] { $runs } cooling run
   *[other] { $runs } cooling runs
}, with the exponential curve. The mean time constant is { $minutes } minutes.
dish-axis-time = time since the first reading, min
dish-axis-difference = water above the air, { $unit }
dish-key-water = readings
dish-key-told = by the time constant
dish-source = Mullick, Kandpal and Kumar 1991 (Solar Energy 46, 139–144). They take the slope of ln(T − Ta); this report takes that of T against the integral of T − Ta: the same in steady air, and true in air that warms, where the other is 2 to 9 % off for 1 K/h and time constants of one to two hours (simulated). They take boiling at 100 °C, this report at the local boiling point.
dish-no-cooling-run = there is no cooling run, so no time constant, no loss and no optical factor
dish-no-cooling-run-remedy = let a hot load cool in the shade, and log it: kind = "cooling"
dish-begins-too-cool = { $log }: the water begins { $above } above the air, and a cooling run needs at least { $least }; it is not used
dish-begins-too-cool-remedy = begin near boiling
dish-warms = { $log }: the water got { $rise } warmer than it was before, so the sun reached it, or hot water was added; it is not used
dish-warms-remedy = turn the cooker away from the sun or shade all of the aperture
dish-cooling-too-short = { $log }: before a gap of over twenty minutes or an excluded span there are too few readings, or a fall of less than a fifth of the first temperature above the air; it is not used
dish-cooling-too-short-remedy = read every five minutes or oftener, for an hour or more
dish-no-loss-area = the surface of the vessels is not stated, so the loss is given in W/K alone
dish-no-loss-area-remedy = state loss_area_m2 under [cooker]: walls and lid of the vessels
dish-no-vessel-heat = the heat capacity of the vessels is not stated and left out: loss and optical factor are too low by its share
dish-no-vessel-heat-remedy = weigh the empty vessels: vessel_mass_kg and vessel_material under [load]
dish-no-heating = no run of water has a rise of { $rise } with irradiance, free of gaps and excluded spans, so there is no optical factor
dish-no-heating-remedy = log a heating of at least { $rise } in the sun, with irradiance
dish-plane-not-normal = irradiance was not measured facing the sun, and the optical factor is for the beam
dish-plane-estimated = irradiance is estimated, and the optical factor takes that of the beam
dish-plane-remedy = keep the sensor facing the sun, and state plane = "normal"
dish-global-not-beam = a sensor that faces the sun sees the sky around it, too, which a mirror with a focus does not use: with it the optical factor is lower than by the beam alone, by about a tenth under a very clear sky, and by a sixth or more in haze (common practice)
dish-global-not-beam-remedy = say in the notes if the sensor saw the beam alone
dish-no-end = within the uncertainty of the instruments the range of one of the figures has no end; it is not given
dish-no-end-remedy = measure irradiance with a better known sensor, and state its uncertainty
dish-one-day = cooling or heating is from one day, so the ranges are not 95 % intervals
dish-one-day-remedy = test on other days

## Energy and exergy

section-efficiency = Energy and exergy
efficiency-what = Energy efficiency: heat taken up by the water over the sunlight on the intercept area. Exergy efficiency: the same for exergy, the part that could do work, in which hot water counts more than warm. Peak exergy: the vertex of the parabola of exergy against the temperature difference; quality factor: the peak over the exergy of the heat lost there.
# { $range } in °C.
efficiency-rests-on = They rest on { counted-intervals } with sound readings, water from { $range }, { $irradiance } W/m² on average. The heat capacity of the vessels is left out.
efficiency-peak-at = The peak lies { $difference } above the air, in the sun of the test ({ $irradiance } W/m² on average).
efficiency-caption = Exergy that the water gains, interval by interval.
efficiency-caption-no-peak = Exergy that the water gains, interval by interval. There is no peak among the intervals.
efficiency-alt = Scatter plot of exergy in watts against temperature difference in kelvin, { counted-intervals }.
efficiency-axis-difference = temperature difference, Td, { $unit }
efficiency-axis-exergy = exergy, W
efficiency-key-intervals = intervals
efficiency-key-parabola = parabola
efficiency-source = Exergy of sunlight after Petela 1964 with the sun at 5777 K; exergy of water by the second law. As Öztürk 2004 and others; papers choose other ranges of water temperature, so compare only with the range above. Peak and quality factor after Kumar, Vishwanath and Gupta 2012; that the loss there is the exergy of the heat lost, u·Td·(1 − Ta/T), with the u of this report, is this project's reading.
efficiency-plane = irradiance was measured with a sensor that lay flat: where the intercept area faces the sun, the sunlight is underestimated, and the efficiencies come out too high
efficiency-plane-remedy = compare only with tests whose sensor lay flat
efficiency-no-peak = exergy has no highest point among the intervals, so there is no peak and no quality factor
efficiency-no-peak-remedy = test from { $above } above the air up to near boiling
efficiency-no-loss = the loss may be zero, so there is no quality factor
efficiency-no-loss-remedy = test over a wider range of water temperatures, and on more days
efficiency-one-day = all data are from one day, so the ranges are not 95 % intervals
efficiency-one-day-remedy = test on other days

## Where no water heats

tested-method-none = none of the standard: no run heats water
tested-environment-dry = Environment of the plateaus
tested-environment-cooling = Environment of the cooling runs
tested-no-plateau = no plateau

## On the terminal: the table of report, and what stands below it

# Headers of the table: there is little room.
terminal-campaign = campaign
terminal-rating = Ps(50), W (95 %)
terminal-r-squared = R²
terminal-used = used
terminal-days = days
terminal-conformity = conformity
terminal-report = report
# Data that nobody measured.
terminal-invented = { $title } (invented)
# What weakens a rating, each behind its level: "indicative only; horizontal sensor".
terminal-irradiance-not-measured = irradiance not measured
terminal-horizontal = horizontal sensor
terminal-plane-not-stated = plane of the sensor not stated
terminal-one-day = one day only: ± is not 95 %
# Of several days, none of which can be left out.
terminal-days-not-in-spread = day-to-day scatter not in ±: not 95 %
terminal-extrapolated = extrapolated to 50 K
# Of several campaigns that share a note; { $names }: their names.
terminal-campaigns = { $count } campaigns ({ $names })
terminal-more = { $count } more
# In place of the campaigns above, before the first of several notes that are alike.
terminal-alike = { $campaigns }; the first
terminal-alike-gravest = { $campaigns }; the gravest case, of the first
terminal-alike-times = { $campaigns }, { $count } times; the first
# Before a note below the table.
terminal-note = note
# A note, or what a campaign lacks, behind those that it is about; a cell behind its header.
terminal-whose = { $whose }: { $said }
terminal-left-alone =
    { $all ->
        [1] left as it is: nothing that the report rests on has changed; --fresh makes it again
       *[other] { $count } of { $all } campaigns left as they are: nothing that their reports rest on has changed; --fresh makes all again
    }
# A note on a campaign; { $names }: long logs.
terminal-kept-beside = { $names } is not inside the PDF: hand it out with the report, or report with --carry-all
# A note on a campaign; { $count }: how many files, { $names }: the first of them.
terminal-unnamed-logs = { $count ->
    [one] one file in its folder looks like a log, and no run names it: { $names }
   *[other] { $count } files in its folder look like logs, and no run names them: { $names }
}

## What check says of the other procedures

# The first line; { $level }: one of those that begin with level-, { $title }: the campaign's.
check-verdict = { $level }: { $title }
# { $caveats }: irradiance-estimated and the like.
check-verdict-with = { $level } ({ $caveats }): { $title }
# Labels of the lines below it, and what stands beside them.
check-next = next
check-so-far = so far
check-aim = aim
check-name = campaign
# The first line of several campaigns; { $levels }: "3 × conforms, 2 × cannot be read".
check-many = { $count } campaigns: { $levels }
check-unreadable = cannot be read
# Before what is to be done next in several campaigns; { $first }: the folder of the first of them.
check-campaigns = { $count } campaigns
check-campaigns-first = { $first } and { $others } more
check-next-unreadable = correct the errors listed below
# Of campaigns for whose next steps there is no room.
check-next-other = see below
check-next-reports = write the reports: { $command }
# Header of a table.
check-folder = folder
# Headings over what is said of several campaigns.
check-many-next = What to do next
check-many-findings = What keeps campaigns from conforming, and what would remedy it
check-many-notes = To state with the numbers
check-many-figures = The other figures
check-shown = { $shown } of { $count } campaigns are shown, first those that fall short most.
check-shown-unreadable = { $shown } of { $count } campaigns are shown: first those that cannot be read ({ $unreadable }), then those that fall short most.
check-shown-only-unreadable = { $shown } of { $count } campaigns are shown, all of them among the { $unreadable } that cannot be read.
# { $one }: a command, { $whole } and { $json }: options.
check-whole = One campaign in full: { $one }. All: { $whole }, or { $json }
check-rating = Ps(50) = { $rating }, from { $used } of { counted-intervals } on { counted-days }
check-no-number = no rating: { $used } of { counted-intervals } can be used
# { $none }: "no rating: there is no interval"; { $power }: "55 ± 12 W (not 95 %)".
check-so-far-balance = { $none }; the heat balance gives { $power } at 700 W/m² and 50 K: indicative, not a rating
check-none-used = no rating: { $intervals ->
    [0] there is no interval
    [one] the only interval cannot be used
   *[other] none of { $intervals } intervals can be used
}
check-not-valid = no number: the water would gain more heat than the sunlight that falls on the cooker; more intervals do not help
# What to do next. { $command } stays as it is.
check-next-report = write the report: { $command }
# { $remedy }: what to do before more is measured.
check-next-then = { $remedy }; then { $missing }
# In place of the remedy above, where a notice doubts place or time.
check-next-note = look first at the note on the site, a date or a clock, and correct what is wrong
# { $next }: what to do; irradiance is estimated, which more of the same does not mend.
check-next-still = { $next } (still indicative without an irradiance sensor that faces the sun)
# Headers of the tables of runs: there is little room.
check-run = run
check-date = date
check-readings = readings
check-intervals = intervals
check-used = used
check-aside = set aside
check-kind = kind
check-from = from
check-to = to
# In the last column of the table, behind a number of intervals: two words at most.
aside-water-below-window = cool water
aside-water-above-window = near boiling
aside-ambient-out-of-range = air
aside-irradiance-low = weak sun
aside-irradiance-high = strong sun
aside-irradiance-unsteady = unsteady sun
aside-wind-high = wind
aside-outside-solar-window = hour
aside-reading-gap = gaps
aside-excluded-by-tester = excluded
aside-not-cloudless = sky
# Headings.
check-findings = Shortcomings, and how to remedy them
check-notes = To state with the number
check-set-aside = Intervals set aside, and what helps
check-notices = Notes
check-how-read = How the logs were read
# Behind the name of a file of keys that campaigns share; { $keys }: the keys, as they are written.
check-shared = gives { $keys }
check-shared-nothing = gives nothing: nearer files state the same keys
# Below the table. { $run }: its name, { $shortest }, { $longest }: minutes.
check-hole = { $run }: no interval from { $from } to { $to } on { $date }: no two water readings there are { $shortest } to { $longest } minutes apart
check-not-normalised = { $run }: { counted-intervals } without irradiance, which meet every limit and are not used
# What helps where intervals are set aside: what the person beside the cooker can do.
helps-water-below-window = start with water a few degrees above ambient, or let it warm before it counts
helps-water-above-window = stop the run, or start again with cool water, once the water nears boiling
helps-ambient-out-of-range = choose another season or time of day
helps-irradiance-low = wait for clear sky, and keep the sensor’s glass clean
helps-irradiance-high = check the sensor’s calibration, and keep reflected light off it
helps-irradiance-unsteady = test on days without passing cloud, and keep the sensor aimed
# In place of the three above where a model of the clear sky gives irradiance, and no sensor.
helps-irradiance-of-model = check latitude, longitude and time zone, from which the sun is estimated, and test nearer to solar noon
helps-wind-high = test in a sheltered place or on calmer days
helps-outside-solar-window = heat within the window, which is in solar time
helps-reading-gap = record every quantity at least once in every interval
helps-excluded-by-tester = nothing, unless the exclusion was a mistake
helps-not-cloudless = note for every reading whether the sky was cloudless; measure irradiance where clouds pass
# Behind helps-outside-solar-window.
helps-by-clock = { $helps }; on { $date } that was { $from } to { $to } by the clock
# Of several logs, { $what }: what is said of each of them.
check-of-logs = { $count } logs
check-figures = Other figures so far
check-no-figures = No other figure yet.
box-grade-one-day = none: F1 is above { $limit } K m²/W (IS 13429), but measured on one day; another day may give less
box-grade-not-flat = none: irradiance was not measured with a sensor that lay flat, for which the limit, { $limit } K m²/W, holds (IS 13429)
box-glass = The glass is { $area }, as stated.
box-glass-not-stated = The intercept area, { $area }, is taken as that of the glass. If it includes mirrors, F2 comes out too low: state the area of the glass.
box-beyond-reach-remedy = F1 is too low, or the sensor read too little in that run: check that the plateau was reached, mirrors were covered alike, and the sensor lay flat
boiling-gets-to = no time to boil: in the sun of the test the water gets to { $highest }, and boils at { $boiling }
boiling-may-not = no time to boil: within the uncertainty of the figures the water may not get to { $boiling }, where it boils
boiling-remedy = test in a stronger sun, or improve the cooker
dish-runs-left-out = runs of water without a rise of { $rise } in the sun that is free of gaps and excluded spans, not used: { $runs }
dry-no-ambient = the air was not read within two hours of the steady stretches
dry-no-ambient-remedy = read the air at least every second time
dry-may-get-hotter = on its plateau the vessel still rose by { $rate } K/min: judged by its first rise it may end { $more } hotter
dry-no-end = the difference per W/m² is not given: within the uncertainty of irradiance its range has no end
efficiency-peak-unsure = the peak is not given: there is none without one of the days, or within the uncertainty of the instruments
efficiency-peak-unsure-remedy = test on more days, each from { $above } above the air up to near boiling
efficiency-too-much = the water took up more heat than the sunlight on the intercept area, which cannot be
efficiency-too-much-remedy = check the intercept area, the load and the units
tested-instruments-note-cooling = Standard uncertainties (k = 1); for a class, its limits. Where neither is stated, the most cautious class is assumed (common practice).

## Comparison: figures beside the rating

section-beside = Figures beside the rating
# A list of several campaigns for each figure: headers, and cells. Numbers are those of campaigns.
beside-head-value = value
beside-head-apart = different from
beside-from-none = none
# A cell: how many of those that it is compared with.
beside-from-so-many = { $apart } of { $compared }
# { $reasons }: some of beside-not-compared-why, with ";" between them.
beside-not-compared-list = Not compared: { $reasons }.
# { $pairs }: some of beside-not-compared-with, with ";" between them.
beside-not-compared-why = { $pairs } ({ $why })
# Numbers of campaigns.
beside-not-compared-with = { $one } with { $others }
beside-pairs = { $count ->
        [one] { $count } pair
       *[other] { $count } pairs
    }
# { $numbers }: "2, 5–7".
beside-list-note = Each ± is for 95 %, unless “{ beside-one-day }” stands beside it. What campaigns have in common cancels in a difference, so two figures whose ranges overlap can still differ. Figures of which no two are compared are in the data file.
beside-first-only = Of each figure the first { $shown } are shown, of { $campaigns } campaigns in all; every pair is in the data file.
# A title where there is no rating.
beside-title = Figures of { $count } campaigns compared
beside-title-none = No figures of these { $count } campaigns can be compared
# { $name }: the campaign with which all others were to be compared.
beside-title-none-of = No figure of { $name } can be compared with that of another campaign
beside-title-hotter = { $first } gets hotter than { $second } when dry
beside-title-not-told = Which gets hotter when dry, { $first } or { $second }, cannot be told
beside-in-all = Differences of figures shown: { $apart } of { $compared }.
# Headers of a table. "First" and "second" are the campaigns of a pair, second − first.
beside-figure = figure
beside-difference = difference
beside-verdict = different?
# After the difference of two percentages.
beside-points = percentage points
# In that column, and on a terminal after the difference.
beside-told-apart = different
beside-not-told-apart = not shown
beside-apart-when-tested = different when tested
# { $pairs } is more than one.
beside-by-chance = not shown among { $pairs } pairs
# { $why }: one of figure-unlike-….
beside-not-compared = not compared: { $why }
# { $verdict }: one of those above; { $marks }: one or several of the next three.
beside-marked = { $verdict } ({ $marks })
beside-one-day = not 95 %
beside-indicative = indicative
beside-vessels-not-stated = vessels not stated
figure-unlike-vessels = other vessels
figure-unlike-plane = irradiance in another plane
figure-unlike-plane-not-stated = plane of irradiance not stated
figure-unlike-load-or-sun = other load, sun or air
figure-unlike-load = other load
figure-unlike-span = other range of water temperatures
figure-unlike-vessel-heat = heat of the vessels counts in one only
figure-unlike-no-budget = what its ± consists of is not known
beside-note = Each ± is for 95 %, unless “{ beside-one-day }” stands beside it. What both have in common cancels in the difference, so two figures whose ranges overlap can still differ.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = The dry vessel of { $second } gets hotter per W/m² than that of { $first }: { $difference } K m²/W more ({ $interval }), { $share } %: a real difference.
beside-cooler = The dry vessel of { $second } gets less hot per W/m² than that of { $first }: { $difference } K m²/W less ({ $interval }), { $share } %: a real difference.
beside-hotter-one-day = The dry vessel of { $second } got hotter per W/m² than that of { $first } when tested: { $difference } K m²/W more ({ $interval }), { $share } %. They were not tested on several days each, so the days alone may explain it: test both again on other days.
beside-cooler-one-day = The dry vessel of { $second } got less hot per W/m² than that of { $first } when tested: { $difference } K m²/W less ({ $interval }), { $share } %. They were not tested on several days each, so the days alone may explain it: test both again on other days.
beside-hotter-by-chance = Which dry vessel gets hotter per W/m², that of { $second } or of { $first }, is not shown: they differ by { $difference } K m²/W ({ $interval }), { $share } %, but among { $pairs } pairs so large a difference can arise by chance.
beside-hotter-not-told = Which dry vessel gets hotter per W/m², that of { $second } or of { $first }, cannot be told: { $second } has { $difference } K m²/W more, { $share } %, and anything from { $interval } fits the data.
beside-cooler-not-told = Which dry vessel gets hotter per W/m², that of { $second } or of { $first }, cannot be told: { $second } has { $difference } K m²/W less, { $share } %, and anything from { $interval } fits the data.
beside-hotter-not-compared = How hot the dry vessels of { $second } and { $first } get is not compared: { $why }.
beside-nothing-shared = { $second } and { $first } have no figure in common.
beside-others = Of the other figures of { $second } and { $first }, { $compared } can be compared; differences shown: { $apart }.
comparison-dry-title = Dry vessels
comparison-dry-note = Plateau: where the vessel got no hotter. K m²/W: vessel above air per W/m², ± for 95 %.
comparison-dry-caption = Temperature of the dry vessel in °C against minutes since the start of a run, in ink that of the campaign above the panel; thick: the plateau. They were not under one sun: compare K m²/W, not degrees.
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = Temperature of the dry vessel against time, highest { $highest }.
comparison-practice-no-rating = JCGM 100:2008 for the differences
beside-note-difference = The uncertainty of a difference of figures beside the rating covers scatter and days of both campaigns, each with its own degrees of freedom, and the instrument errors that they do not share. The effect of a day on both is not removed, which makes it larger. Ratings are compared separately; so are gain and loss where both have a rating and a heat balance.
beside-note-alike = Figures are compared where the campaign files state like conditions: per W/m², irradiance in one plane; of dry or cooling vessels, as many vessels with the same heat and surface within 2 %; times to boil, efficiency and peak exergy, irradiance within 2 % and ambient within 2 K; times to boil, load within 2 % and boiling point within 2 K; efficiency, a range of water temperatures within 5 K at its ends and 2 K on average; F2, a load per m² within 10 %; time constant, load within 2 %. These limits are common practice. "Vessels not stated": not known to be alike.
beside-note-pairs = "Different": p of the difference is under 0.05, corrected by Holm for the pairs in which the figure is compared, of { $pairs } in all; it is not corrected for the number of figures. Figures of single days are never called different.

## Slips that show

dry-sun-down = the sun was below the horizon at the plateau, so the clock, the time zone or the place is wrong
dry-sun-down-remedy = correct time_zone, latitude and longitude under [site], or the times of the log
dry-colder-than-air = the vessel reads { $below } below the coolest air of the run: one of the two is in another unit than stated
dry-very-hot = the vessel reads { $highest }, hotter than home-built cookers get (common practice, no published source): is the thermometer in °F?
dry-unit-remedy = state vessel_temperature and ambient_temperature under [units], "°F" or "°C", as each thermometer shows
dish-losses-differ = the loss by cooling, { $cooling } W/K, and that of the heat balance, { $balance } W/K, differ by more than their ±: sun reached the cooling load, or the wind was another
dish-losses-differ-remedy = shade all of the aperture and the pot while it cools, and note the wind in both
box-plane-turned = the readings of the horizontal sensor were converted to the plane facing the sun, an estimate; F1 and F2 are defined for them unconverted
box-plane-turned-remedy = make a second campaign of the same logs without estimate, with plane = "horizontal"
notice-long-run-other = { $log }: the readings span { $days } days, a run is one test on one day; check the dates, or set start and end
finding-no-water = no run of this campaign heats water, so there is nothing to rate
finding-no-water-remedy = heat a weighed load of water for a rating; the other figures stand by themselves
instrument-assumed = not stated; assumed a { $class }: { $basis }

## A test day while it runs, on the terminal

# The first line: how it stands. It is read in the sun, so it is short.
watch-waiting = Waiting for the first row of today
watch-silent = No row for { $time }
watch-over = The solar window has closed for today
# { $kind }: what is tested, a message that begins with kind-.
watch-other-run = Being read: { $kind }
watch-begins = An interval begins
watch-no-run = Rows arrive, but belong to no run
# { $passed }, { $length }: minutes.
watch-good = Good so far: { $passed } of { $length } min of this interval
# { $faults }: one of the next two or several, or a message that begins with reason-.
watch-at-risk = At risk: { $faults }
watch-spoiled = This interval is spoiled: { $faults }
# { $what }: what is limited, a message that begins with limit-; then numbers with their unit.
watch-at-least = { $what } { $found }, at least { $limit }
watch-at-most = { $what } { $found }, at most { $limit }
# Behind check-next: what to do.
watch-next-start = aim, and start the logger
watch-next-logger = look at the logger: power, cable, memory
watch-next-tomorrow = stop for today
watch-next-aim = aim now
watch-next-no-run = see that the water rises, and look at start and end in campaign.toml
watch-next-keep = leave it as it is
watch-next-enough = it is enough: you can stop after this interval
watch-next-cool-water = have cool water ready: the next interval gets too hot
# { $remedy }: a message that begins with helps-.
watch-next-spoiled = { $remedy }; the next interval begins at { $clock }
# Labels, and what stands beside them.
watch-vessel = vessel
watch-above = { $difference } above the air (Td)
watch-air = air { $air }
watch-irradiance = { $irradiance } W/m²
# { $turned }: as it counts, { $irradiance }: as the sensor that lies flat has it.
watch-irradiance-turned = { $turned } W/m² facing the sun, which is used (flat sensor: { $irradiance })
watch-wind = wind { $wind }
watch-spoils = spoils it
watch-spoils-irradiance = irradiance under { $low } or over { $high } W/m²
watch-spoils-wind = mean wind over { $most } (so far { $mean })
watch-spoils-water = water over { $most }
watch-today = today
# In place of today, where the newest row is of another day; what stands beside it.
watch-last-day = last day
# { $gained }: the next one.
watch-gained-on = { $date }: { $gained }
# { $all }: intervals of today, used or not.
watch-gained = { $used } of { $all ->
    [one] { $all } interval used
   *[other] { $all } intervals used
}
watch-missing = still missing: { $missing }
watch-missing-nothing = enough already
watch-aim = aim again
watch-aim-not-stated = no times, since acceptance_half_angle_deg is not stated in campaign.toml. Common practice, no published source: a shallow reflector about every 45 min, a sharp dish every 10 to 15
watch-aim-always = all the time, by a drive
watch-aim-due = now ({ $clock })
watch-aim-done = no more today
watch-at-in = at { $clock }, in { $time }
watch-opens = opens at { $clock }, in { $time }
watch-closes = closes at { $clock }, in { $time }
watch-closed = closed at { $clock }
# { $said }: what check says; { $level }: one of those that begin with level-.
watch-so-far = { $level }: { $said } (rows up to { $clock })
watch-so-far-no-row = { $level }: { $said }
watch-time = time
watch-time-text = { $now }; newest row { $row }
watch-seconds = { $seconds } s
# From two days on.
watch-days = { $days } days
# What is not as it should be. { $what }: an error, in English.
watch-log-missing = { $log } is not there yet
watch-log-gone = { $log } is gone; what it held before is shown
watch-not-read = cannot be used now: { $what }
watch-campaign-not-read = the campaign file cannot be used now, the last good one is used: { $what }
watch-line-not-ended = { $log }: its last line is incomplete, and not used yet
watch-begun-anew = { $log } was started anew: only its present content is used
watch-none-later = lines came without a reading later than { $clock }: was the logger’s clock put back?
watch-clock-jumped = the clock of the rows jumped by { $time }
watch-clocks-apart = the clock of the rows and that of this computer differ by { $time }
watch-caution = Never look into the focus or at the sun. Hot metal and steam burn: gloves. Turn the cooker from the sun before you reach in. Local codes and licensed practice come first.
watch-caution-dry = A dry vessel gets far above 100 °C and burns at a touch. Never pour water into it while it is hot. Never look into the focus or at the sun; turn the cooker from it before you reach in. Local codes and licensed practice come first.
