# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = not stated

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Box cooker
cooker-panel = Panel cooker
cooker-concentrating = Concentrating cooker
cooker-tube = Tube cooker
aperture-circle = circle, { $diameter } m across
aperture-rectangle = rectangle, { $width } m by { $height } m
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = regular polygon, { $sides } sides, { $across } m across corners
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
class-measuring-jug = measuring jug
class-platform-scale = platform scale
class-kitchen-scale = kitchen scale
class-watch = watch, read by hand
class-logger = a logger's clock
# What the uncertainty of a class follows from. 95 %: level of confidence.
basis-for-95-percent = ± { $limit } % for 95 %
basis-within-percent = within ± { $limit } %
basis-within-kelvin = within ± { $limit } K
basis-within-kelvin-read = within ± { $limit } K, read to { $step } K
basis-within-seconds = within ± { $limit } s

## Section 1: the line under the title

# These four stand after each other, with a dot between them.
subtitle-cooker = { $cooker }, { $area } m²
subtitle-site = { $site }, { $elevation } m
subtitle-tester = tested by { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = { $first } to { $last }
# "28 September to 3 October 2026".
dates-of-a-year = { $day } { $month } to { $last }
dates = { $first } to { $last }

## Section 1: what was tested
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
tested-area-text = { $area } m²
tested-aperture = aperture
tested-description = description
# In which condition the cooker was when it was tested.
tested-condition = condition when tested
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
tested-per-area-text = { $load } kg/m² (practice: { $practice } kg/m²)
tested-vessels = vessels
# Heading: what surrounded the used intervals. { $mean } and { $range } have their unit.
tested-environment = Environment of the used intervals
environment-ambient = ambient
environment-irradiance = irradiance
environment-wind = wind
environment-text = mean { $mean }, intervals { $range }
environment-none = no used interval
tested-site = Site
tested-place = place of test
tested-position = position
tested-position-text = { $latitude }, { $longitude }, { $elevation } m
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
tested-client = for (client)
tested-contact = client's contact
# What of the data the client supplied, and not the tester.
tested-client-data = from the client
# How the cooker was chosen from among several.
tested-sampling = sampling
tested-not-sampled = not stated, taken as handed in and not sampled
# Results that somebody else measured.
tested-others = results from others
tested-others-station = irradiance, from the log of a station nearby
# As ISO/IEC 17025 asks: data that the laboratory did not establish is marked.
tested-stated-note = What is said of the cooker, the load, the site, the laboratory and the client is stated in the campaign file and not checked here; what follows from it, such as the load per area and the boiling point, is as good as that. A wrong area, load or uncertainty makes a wrong rating. Results are of the cooker as it was handed in.

## Section 1: instruments

tested-water-temperature = water temperature
tested-ambient-temperature = ambient temperature
tested-wind-speed = wind speed
tested-water-mass = mass of water
tested-irradiance-estimated = irradiance, estimated
tested-irradiance-normal = irradiance, normal to the beam
tested-irradiance-horizontal = irradiance, horizontal plane
tested-irradiance-plane-assumed = irradiance, plane not stated, taken as normal to the beam
instrument-not-measured = not measured
# { $description }: the tester's own words; { $id }: a mark or number.
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
instrument-estimated-uncertainty = { $uncertainty }; section 5
instrument-uncertainty-of-model = that of the model; section 5
instrument-by-class = by its class, { $basis }
instrument-by-eye = by eye, Beaufort scale (WMO-No. 8)
instrument-by-eye-uncertainty = the range of a number, such as 0.3 to 1.5 m/s
uncertainty-percent = { $percent } % of the reading
uncertainty-kelvin = { $kelvin } K
uncertainty-speed = { $speed } m/s
uncertainty-seconds = { $seconds } s
tested-instruments-note = Uncertainties are standard uncertainties (k = 1), as the tester states them; section 5 says what is taken where none is stated. The practice asks for the water sensor in the water, at the centre, 10 mm above the bottom, for the wind beside the cooker at its height, and for an even load over the vessels (from memory); none of these is checked here.

## Section 5: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = combined
budget-root = root of the sum of squares
# The rating with its expanded uncertainty.
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
budget-scatter = scatter about the line
budget-scatter-within-days = scatter within days
budget-scatter-text = { $deviation } W an interval, { $intervals ->
        [one] { $intervals } interval
       *[other] { $intervals } intervals
    }
budget-reading = reading of the water temperature
budget-reading-text = { $deviation } W an interval, { $intervals ->
        [one] { $intervals } interval
       *[other] { $intervals } intervals
    }; more than the scatter that was seen
budget-days = day-to-day spread
budget-days-text = { $deviation } W a day, { $days ->
        [one] { $days } day
       *[other] { $days } days
    }
budget-per-percent = { $sensitivity } W per %
budget-per-kelvin = { $sensitivity } W per K
budget-watts = { $power } W
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
error-water-temperature = water temperature
error-ambient-temperature = ambient temperature
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
source-common-practice = common practice, no published source
source-wmo-8 = WMO-No. 8, hourly totals, for the classes of ISO 9060:1990 (secondary standard, first, second) that A, B, C of 2018 follow
source-iec-60584 = IEC 60584-1:2013, tolerance up to 100 °C
source-iec-60751 = IEC 60751, tolerance at 100 °C, from memory
source-clear-sky = Ineichen and Perez 2002; 5 % from memory of Reno, Hansen and Stein 2012 (SAND2012-2389); turbidity: common practice, no published source
source-conversion = Erbs, Klein and Duffie 1982; spread of the beam from memory of Gueymard and Ruiz-Arias 2016
source-specific-heat = IAPWS-IF97, 10 to 95 °C

## Section 5: what the budget comes to

# { $rating }: rating-with-uncertainty. { $freedom }: a number, or freedom-large.
budget-result = Ps(50) = { $rating }. Expanded uncertainty ± { $expanded } W: combined { $combined } W times k = { $factor }, Student's t for 95 % and { $freedom } effective degrees of freedom (JCGM 100:2008, Welch–Satterthwaite).
freedom-large = over 1000
budget-note-columns = Last column: each line's share of the variance, as its part of the expanded uncertainty; the parts add up to it. Type A: by statistics of the intervals; B: otherwise. Errors of instruments are taken as common to all intervals: those of irradiance, mass, specific heat and time scale the whole line and never show in the scatter; those of temperature cancel in the rise of the water and move Td.
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = What the tester did not state is from: { $sources }. Limits without more knowledge are taken as rectangular, u = limit/√3 (JCGM 100:2008, 4.3.7).
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = For { $quantities } the campaign file states neither uncertainty nor class, so the most cautious class is assumed. Stating what was used will most likely make the uncertainty smaller.
# What single readings explain of the scatter.
budget-note-reading = Of the { $scatter } W by which an interval scatters, the step in which the water thermometer is read explains { $step } W and the moment of reading { $moment } W; both are in the scatter and not counted again.
budget-note-reading-most = Of the { $scatter } W by which an interval scatters, the step in which the water thermometer is read explains { $step } W and the moment of reading { $moment } W; both are in the scatter and not counted again. The thermometer's step is most of the scatter: a finer one would help more than anything.

## Section 5: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = No Monte Carlo check: irradiance is so uncertain that some draws of it fall to zero or below. The interval above is then no more than a guess.
drawn = Monte Carlo check (JCGM 101:2008): the same errors drawn { $trials } times through readings, power, regression and line give { $lower } to { $upper } W for 95 %.
drawn-deviation = Monte Carlo check (JCGM 101:2008): the same errors drawn { $trials } times through readings, power, regression and line give { $lower } to { $upper } W for 95 %, standard deviation { $deviation } W.
drawn-agrees = The ends of both intervals lie within { $tolerance } W, the tolerance of JCGM 101 for one significant digit: the budget holds.
drawn-narrower = That is { $apart } W from the budget's interval, where JCGM 101 allows { $tolerance } W for one significant digit. The draws reach less far: errors within limits end where a normal distribution goes on. The budget is on the safe side.
drawn-few-days = That is { $apart } W from the budget's interval, where JCGM 101 allows { $tolerance } W for one significant digit. The tails of Student's t for so few degrees of freedom weigh more in the draws; more days bring the two together. Where much depends on it, take the wider one.
drawn-skewed = That is { $apart } W from the budget's interval, where JCGM 101 allows { $tolerance } W for one significant digit. Dividing by an irradiance that may be far off skews the draws; a better known sensor brings the two together. Where much depends on it, take the wider one.

## Section 5: what more data would bring

outlook-at-best = More intervals and days would bring the uncertainty down to ± { $least } W at best; the rest is the instruments'.
outlook-reached = The ± { $target } W aimed at are reached.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = The ± { $target } W aimed at take { $more }, assuming the spread seen so far.
outlook-more-one-day = The ± { $target } W aimed at take { $more }, assuming the spread seen so far and that days do not differ.
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
outlook-out-of-reach = The ± { $target } W aimed at cannot be reached with more intervals: the instruments alone leave ± { $least } W. { $heaviest }
heaviest-irradiance = Irradiance weighs most.
heaviest-clear-sky = Irradiance, estimated weighs most.
heaviest-conversion = Irradiance, turned to the sun weighs most.
heaviest-distance = Irradiance, at the station weighs most.
heaviest-water-temperature = Water temperature weighs most.
heaviest-ambient-temperature = Ambient temperature weighs most.
heaviest-water-mass = Water mass weighs most.
heaviest-specific-heat = Specific heat of water weighs most.
heaviest-clock-rate = Time weighs most.
outlook-too-far = The ± { $target } W aimed at would take more intervals than anybody measures, assuming the spread seen so far.
outlook-too-far-one-day = The ± { $target } W aimed at would take more intervals than anybody measures, assuming the spread seen so far and that days do not differ.

## Page one, and section 5: what limits the number most

limits-most-step = What limits this number most is the step in which the water thermometer is read: { $percent } % of its variance.
limits-most-estimate = What limits this number most is that irradiance is estimated: { $percent } % of its variance.

## Section 5: days, neighbours and single intervals

days-one = All used intervals are from one day: how much days differ cannot be told, so it is not in the uncertainty. Another day may well read outside the range stated.
days-too-few-intervals = Too few intervals to tell days apart from scatter; how much days differ is not in the uncertainty.
days-no-scatter = The intervals lie on their days' lines without any scatter, so days cannot be tested.
# Of Fisher's F test: degrees of freedom, the statistic, the probability.
days-numbers = F({ $between }, { $within }) = { $statistic }, p = { $p }
# { $numbers }: days-numbers. One of days-are-independent and days-are-independent-two follows
# after the first three.
days-differ = Days differ by more than their scatter explains ({ $numbers }).
days-may-differ = Days may differ ({ $numbers }); to overlook it would state too small an uncertainty.
days-neighbours = Days do not differ beyond the scatter ({ $numbers }), but neighbours within a run are alike.
days-alike = Days do not differ beyond the scatter of their intervals ({ $numbers }), so every interval counts as independent.
days-are-independent = The uncertainty therefore takes { $days } days, and not the intervals, as what is independent, with { $freedom ->
        [one] { $freedom } degree
       *[other] { $freedom } degrees
    } of freedom.
days-are-independent-two = The uncertainty therefore takes { $days } days, and not the intervals, as what is independent, with { $freedom ->
        [one] { $freedom } degree
       *[other] { $freedom } degrees
    } of freedom. Two days are too few for that: where days differ, in simulations the interval then covered the truth in 89 of 100 cases, not in 95.
neighbours-alike = Durbin–Watson within runs d = { $statistic } (2 if independent), p = { $p }: intervals that follow each other are alike, as when the aim or the sky drifts.
neighbours-independent = Durbin–Watson within runs d = { $statistic } (2 if independent), p = { $p }: no sign that intervals that follow each other are alike.
# { $intervals }: influence-one of each, with "," between them.
influence = Intervals that move the line more than others, by Cook's distance over 4/n, none of them removed: { $intervals }.
influence-more = Intervals that move the line more than others, by Cook's distance over 4/n, none of them removed: { $intervals }; { $more } more.
# { $time }: time of day.
influence-one = { $date } { $time } (Cook's distance { $distance }; without it Ps(50) is { $power } W)

## Section 5: the figure beside the budget

spread-caption = Left: residuals in order of size against those of a normal distribution; on the dashed line if they are normal. Right: the line with its 95 % band, dark from scatter and days, light with the instruments.
# Read out to those who do not see the figure.
spread-alt = Two panels. Normal quantile plot of { $points } residuals. The line with its 95 percent band: at 50 kelvin { $power } watts, plus or minus { $scatter } watts from scatter and days, plus or minus { $expanded } watts with the instruments.

## Section 8: deviations and provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = Own limit: { $key } = { $value } ({ $what }).
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run }: { $from } to { $to } excluded by the tester: { $reason }.
deviation-excluded-no-reason = { $run }: { $from } to { $to } excluded by the tester: no reason given.
deviation-findings = Further: every finding on page one.
deviation-interval = Interval length: 540 to 660 s are admitted, and power is taken over the time that really passed, where the practice speaks of 600 s.
# Labels stand at the left; there is room for 20 letters.
made-with = made with
made-issued = issued
made-practice = practice
made-solar-time = solar time
made-solar-time-text = NREL/TP-560-34302, from time and longitude
made-boiling = boiling point
made-boiling-text = ISO 2533 atmosphere where no pressure was measured, IAPWS-IF97 saturation
made-irradiance = irradiance
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimated { $way }; plane normal to the beam after Liu and Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimated { $way }, Linke turbidity { $turbidity } as stated; plane normal to the beam after Liu and Jordan 1963
made-irradiance-usual = estimated { $way }, Linke turbidity { $turbidity } (common practice, no published source); plane normal to the beam after Liu and Jordan 1963
# How a limit is decided to be met. The title of the guide is not translated.
made-decision = decision rule
made-decision-text = each limit is held against the value observed, with no allowance for its uncertainty, and is met when met exactly: the simple acceptance of JCGM 106:2012 (from memory)
report-end = End of report { $number }
