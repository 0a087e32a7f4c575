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
counted-ten-minutes = { $intervals ->
    [one] { $intervals } ten-minute interval
   *[other] { $intervals } ten-minute intervals
}
counted-days = { $days ->
    [one] { $days } day
   *[other] { $days } days
}
counted-readings = { $readings ->
    [one] { $readings } reading
   *[other] { $readings } readings
}
# Of the line: points less two.
counted-freedom = { $freedom ->
    [one] { $freedom } degree of freedom
   *[other] { $freedom } degrees of freedom
}

## Every page

report-kind = Solar cooker test report
report-kind-indicative = Solar cooker test report: indicative
report-kind-estimated = Solar cooker test report: indicative, irradiance estimated
# { $title } is the tester's own.
report-title-indicative = { $title } (indicative)
report-title-estimated = { $title } (indicative, irradiance estimated)
report-invented = Invented data, for demonstration
report-statement = Results relate only to the cooker as tested. Reproduce only in full.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = irradiance estimated
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Report [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = page [page] of [pages]

## Page one: how far the rating conforms

level-conforms = Conforms
level-conforms-with-notes = Conforms with notes
level-indicative = Indicative only
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = { level-conforms } to ASAE { $procedure }, as section 2 states it
headline-conforms-with-notes = { level-conforms-with-notes } to ASAE { $procedure }, as section 2 states it
headline-indicative = { level-indicative }, does not conform to ASAE { $procedure }, for the findings below
headline-indicative-missing = { level-indicative }, does not conform to ASAE { $procedure }; still missing: { $missing }
headline-unbelievable = { level-indicative }, and not to be believed: the water gained more heat than the sunlight holds
headline-unbelievable-missing = { level-indicative }, and not to be believed: the water gained more heat than the sunlight holds; still missing: { $missing }
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
page-no-rating = no rating
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = irradiance estimated { $way }
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-parts = of it, scatter and days { $scatter } W, instruments { $instruments } W
headline-each-watt = 95 %; each watt has its line in section 5
headline-some-assumed = 95 %; some instruments are assumed (section 5)
headline-monte-carlo = a Monte Carlo check gives { $range } W (section 5)
headline-extrapolated = an extrapolation: 50 K lies outside what was observed

## Page one: the rating in plain words

headline-takes-up = Water 50 K warmer than the air takes up { $power } W in sunlight of 700 W/m².
headline-loses = Water 50 K warmer than the air loses { $power } W in sunlight of 700 W/m².
headline-no-rating = These readings do not give a rating. The findings below say what is missing.
# Followed by "; " and one of headline-heat-ends and headline-boils-first, or by a full stop.
# { $amount }: headline-two-kilograms or "1.5 kg". { $journey }: from where to where, below.
# "That irradiance" is the one of headline-takes-up.
headline-heats = At that irradiance { $amount } of water go { $journey } in about { $time }
headline-heats-at = At { $irradiance } W/m² { $amount } of water go { $journey } in about { $time }
headline-may-not-heat = At that irradiance water may not get { $journey }
headline-may-not-heat-at = At { $irradiance } W/m² water may not get { $journey }
headline-does-not-heat = At that irradiance water does not get { $journey }
headline-does-not-heat-at = At { $irradiance } W/m² water does not get { $journey }
headline-two-kilograms = two kilograms
headline-heat-ends = the useful heat ends near { $end } (95 %: { $range })
headline-boils-first = the water boils before the useful heat ends
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = from { $degrees }
journey-degrees = { $start } to { $target }
journey-to-boiling = from { $start } to boiling ({ $boiling } here)
# { $result } as in stagnation-result.
headline-dry = The dry vessel came to { $difference } K above the air in { $irradiance } W/m²: { $result } (section 6).
# How many intervals count. No full stop; headline-no-irradiance and headline-others follow
# after "; " where they apply.
headline-met = { $used } of { counted-ten-minutes }, on { counted-days }, met every condition
headline-met-measured = { headline-met } that was measured
headline-met-estimated = { headline-met } that was measured or estimated
headline-no-irradiance = { $count } more have no irradiance
# { $reasons }: headline-reason or headline-either-reason.
headline-other = the other was set aside because { $reasons }
headline-others = the others were set aside, most often because { $reasons }
# { $reason }: one of the messages that begin with reason-; { $count }: intervals.
headline-reason = { $reason } ({ $count })
headline-either-reason = { $first } or { $second }

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation }; R² = { $r_squared }; { counted-used } on { counted-days }, Td from { $lowest } to { $highest } K
# R² of points that all have the same power.
undefined = undefined
power-line-caption = { $facts }.
# Read out to those who do not see the figure.
power-line-alt = Scatter plot of standardised cooking power in watts against the temperature difference between water and ambient in kelvin. { $facts }; { $aside } set aside. The line reads { $power } watts at 50 kelvin.
power-line-estimated = Irradiance estimated: { $text }
no-line-facts = { counted-used } and { $aside } set aside; no line can be fitted
no-line-alt = Scatter plot of standardised cooking power against temperature difference: { $facts }.
page-findings = Findings, and what would mend them
page-brief = Conditions, as the used intervals saw them
page-brief-condition = condition
page-brief-limit = limit
page-brief-observed = observed
page-brief-set-aside = intervals set aside
page-brief-note = An interval may break several conditions and then counts for each.
brief-irradiance = Irradiance
brief-irradiance-change = Change of irradiance in an interval
brief-wind = Mean wind, and long gusts
brief-ambient = Mean ambient temperature
brief-water-above = Water above ambient, both ends
brief-water-below = Water below boiling, both ends
brief-water-fixed = Water temperature, both ends
brief-solar-time = Solar time
page-before-you-cook = Before you cook.
headline-caution = Hot surfaces and steam burn, the focus can blind and start fires, and this rating says nothing about food safety. Read the cautions in section 7 before you cook. Local codes and licensed practice come first.

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = { counted-intervals } used, the practice asks for { $least }
finding-too-few-intervals-remedy = { missing-intervals } that can be used
finding-too-few-days = used intervals on { counted-days }, the practice asks for { $least }
finding-too-few-days-remedy = used intervals on { missing-days }
finding-no-rating = no line can be fitted: it takes three used intervals with irradiance, at different temperature differences
finding-no-rating-remedy = more intervals that can be used, from ambient to near boiling
finding-no-rating-remedy-irradiance = measure irradiance; without it power cannot be normalised
finding-r-squared-low = R² is { $r_squared }, below { $least }; the practice would be content with a note, this report is not
finding-r-squared-low-remedy = steadier aiming, clearer sky and less wind; a sensor that does not touch the pot
finding-line-not-falling = the power does not fall as the water gets hotter, which no real cooker does
finding-line-not-falling-remedy = check that the water temperature is that of the water, and cover a wider range of temperatures
finding-no-useful-heat = the line reads { $power } W at { $difference } K: there the water loses heat
finding-no-useful-heat-remedy = check that the readings are of water being heated, with the cooker aimed
finding-extrapolated = { $difference } K lies outside the temperature differences observed, { $lowest } to { $highest } K
finding-extrapolated-remedy = used intervals on both sides of { $difference } K
# { $runs }: a list of finding-load-off-run.
finding-load-off = the load is more than { $tolerance } % away from { $load } kg/m² in { $runs }
finding-load-off-run = { $run } ({ $load } kg/m²)
finding-load-off-remedy = weigh in { $load } of water for each m² of intercept area, or correct that area
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = wind was not measured in { $runs }
finding-wind-not-measured-remedy = measure the wind beside the cooker, at its height
finding-wind-estimated = wind is an estimate by eye in { $runs }, good to a number of the Beaufort scale
finding-irradiance-estimated = irradiance was not measured at the cooker in the plane normal to the beam, but estimated { $way }
finding-irradiance-estimated-remedy = measure irradiance beside the cooker, with a sensor that faces the sun
finding-irradiance-missing = irradiance was not measured in { $runs }, whose intervals cannot be normalised and are not on the line
finding-irradiance-missing-remedy = measure irradiance in the plane normal to the beam
finding-irradiance-horizontal = irradiance was measured in the horizontal plane, the practice asks for the plane normal to the beam; there it is usually higher, so the rating is probably too high
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = mount the sensor so that it faces the sun as the cooker does; until then estimate = "from-horizontal" turns its readings to the sun
finding-impossible-gain = { counted-used } gained more heat than the sunlight intercepted; the first took { $power } W from { $sunlight } W
finding-impossible-gain-remedy = check the mass of water, the intercept area, and the units of temperature and irradiance
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = own limits looser than a requirement: { $limits }
finding-recommendation-relaxed = own limits looser than a recommendation: { $limits }
finding-limit-tightened = own limits tighter than the practice: { $limits }
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (practice: { $practice })
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = go back to the practice's limits: delete these under [limits] in the campaign file
finding-excluded-by-tester = { counted-intervals } excluded by the tester
finding-excluded-by-tester-remedy = none, if the reason given in the campaign file stands

## Section 1

page-tested = What was tested
page-instruments = Instruments
page-instruments-quantity = quantity
page-instruments-instrument = instrument
page-instruments-uncertainty = standard uncertainty

## Section 2: conditions

page-conditions = Conditions
# Headers of the table.
page-conditions-condition = condition
page-conditions-limit = limit
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
limit-wind-gust = wind kept up for over ten minutes (sets the run aside)
limit-solar-time-start = solar time at the start
limit-solar-time-end = solar time at the end
limit-load = water for each m² of intercept area
limit-intervals = used intervals
limit-days = days with used intervals
limit-r-squared = R² of the line
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = requirement
standing-recommendation = recommendation
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = own, for a requirement
standing-own-recommendation = own, for a recommendation
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = no line
# Of gusts.
conditions-never = never
conditions-gust = for { $time } at most
conditions-no-interval = no interval
conditions-not-measured = not measured
conditions-source = Limits follow ASAE { $procedure }, in our own words. They were set down from knowledge of the practice, without a copy of the standard at hand; where much depends on one, hold it against the standard.
conditions-observed = Observed: lowest to highest over all intervals, used or set aside. An interval that breaks several limits counts for each of them.
conditions-common-practice = The ± 5 % on the load and the 540 to 660 s that an interval may last are common practice, no published source.
conditions-r-squared = Where R² is too low the practice is content with a note; this report then withholds "conforms", which is stricter.
# "Own" as in standing-own-requirement.
conditions-own = Limits marked "own" are the campaign's and deviate from the practice.

## Section 3: runs

page-runs = Runs
page-runs-how = Shaded: spans of used intervals. Dashed: the water temperature that the line predicts from the irradiance and the air measured; dots: measured, at the ends of the intervals. Bars: the time that is used, and the time that each limit set aside.
run-title = Run { $number }, { $date }
# { $run }: its name; { $from }, { $to }: times of day.
run-summary = { $run }: { counted-readings } from { $from } to { $to }, { $water } of water ({ $load } kg/m²). { counted-intervals }, { $used } used.
run-summary-re-aimed = { $run }: { counted-readings } from { $from } to { $to }, { $water } of water ({ $load } kg/m²); re-aimed every { $minutes } min. { counted-intervals }, { $used } used.
run-hole = No interval from { $from } to { $to }: no two water readings there are 9 to 11 minutes apart.
run-caption-predicted = The line predicts the water temperature within { $rms } K, root mean square.
run-caption-none = No interval of this run is used.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Panels against local clock time from { $from } to { $to }: water between { $coldest } and { $hottest } degrees Celsius with ambient temperature; { $irradiance }; { $wind }. Used and shaded: { $used } of { counted-intervals }. { $predicted } Set aside: { $aside }.
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = The line predicts the water temperature within { $rms } kelvin, root mean square.
run-alt-not-predicted = The line predicts nothing for this run.
run-alt-irradiance = irradiance between { $lowest } and { $highest } watts per square metre
run-alt-no-irradiance = irradiance not measured
run-alt-wind = wind between { $lowest } and { $highest } metres per second
run-alt-no-wind = wind not measured

## Section 4: intervals

page-intervals = Intervals
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = local time
page-intervals-solar = solar
page-intervals-water = water, °C
page-intervals-ambient = amb., °C
page-intervals-irradiance = irradiance, W/m²
page-intervals-wind = wind, m/s
page-intervals-power = P, W
page-intervals-difference = Td, K
page-intervals-standardised = Ps, W
page-intervals-outcome = used, or set aside for
page-intervals-used = used
interval-no-irradiance = no irradiance
page-intervals-note = Water: at the start and end of the interval. Irradiance: mean, lowest and highest. P: cooking power. Td: mean water minus mean ambient temperature. Ps: P normalised to 700 W/m².
page-reasons = What the reasons mean
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

## Section 5: regression and uncertainty

page-regression = Regression and uncertainty
regression-none = No line can be fitted: that takes at least three used intervals with irradiance, at different temperature differences.
regression-method = Ordinary least squares of Ps on Td over the used intervals of all runs, each with equal weight; intervals with Student's t. P = m·c·(T2 − T1)/Δt with c = 4186 J/(kg K) and the time that really passed; Ps = P·700/G with the mean irradiance G of the interval; Td = mean water minus mean ambient temperature. Means are weighted by time.
# Labels, and what stands beside them.
regression-line = line
regression-intercept = intercept a
regression-watts = { $value } W, standard error { $error } W
regression-slope = slope b
regression-watts-per-kelvin = { $value } W/K, standard error { $error } W/K
regression-residual = residual standard deviation
regression-points = points
regression-points-text = { counted-intervals } on { counted-days }, { counted-freedom }
regression-confidence = 95 % confidence interval of the line at 50 K, from its scatter alone
regression-prediction = 95 % prediction interval of one interval at 50 K
residuals-caption = Residuals of the used intervals, by day; dashed: twice their standard deviation.
# Read out to those who do not see the figure.
residuals-alt = Residuals about the line in watts, against temperature difference in kelvin and against local clock time, with a mark for each day; standard deviation { $deviation } watts; { $outside ->
    [one] { $outside } of { $points } points lies further than twice that from the line.
   *[other] { $outside } of { $points } points lie further than twice that from the line.
}
page-scatter = Days, neighbours and single intervals
page-uncertainty = Uncertainty of Ps(50)
# Headers of a table of six columns.
page-uncertainty-source = source
page-uncertainty-of-source = its standard uncertainty
# Type A or B of the GUM.
page-uncertainty-type = type
page-uncertainty-sensitivity = sensitivity
page-uncertainty-of-rating = in Ps(50)
page-uncertainty-part = part of the ±

## Section 6: what it means for cooking

page-cooking = What it means for cooking
page-cooking-water = water
# [journey] is put in by the program: "from 20 to 95 °C", the message journey.
page-cooking-time = time [journey]
page-cooking-range = 95 % range
page-cooking-boiling = to boiling (95 %)
page-foods-food = food
page-foods-specific-heat = specific heat
page-foods-cooked = cooked at
page-foods-amount = amount
page-foods-range = 95 % range
page-year = Clear days through the year
page-year-month = month
page-year-hours = hours with enough sun
page-year-heat = heat a day
page-year-water = water pasteurised a day
page-fuel = Fuel that the heat stands in for
page-dry = Dry vessel
page-dry-date = date
page-dry-plateau = plateau
page-dry-air = air
page-dry-irradiance = irradiance
page-dry-difference = difference for each W/m²
page-dry-notes = notes
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimated
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = Highest steady temperature of the empty, dark vessel above ambient, for each W/m²; ± for 95 %, an oven thermometer within ± 10 K where no uncertainty is stated. It tells losses from light, and is no cooking power. The ratio is the one Mullick, Kandpal and Saxena 1987 use for box cookers (from memory); for other cookers it only compares like with like. To hold it against, common practice, no published source: a thin dark pot in a shallow many-sided reflector of about a square metre comes to around { $usual } in half an hour. An empty vessel can glow, crack or lose its coating: never leave it.
page-assumed = Assumed

## Section 7

page-cautions = Cautions
# [source] is put in by the program.
page-cautions-source = Source: [source].

## Section 8: deviations, notes and provenance

page-provenance = Deviations, notes and provenance
page-deviations = Deviations from the practice
page-tester-notes = The tester’s notes
page-notices = Notices from reading the logs
page-logs = How the logs were read
page-made-with = Made with
# SHA-256: digits that change when a file changes.
page-inputs = Inputs, with their SHA-256
