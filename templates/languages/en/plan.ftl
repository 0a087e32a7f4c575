# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
plan-day = { $weekday } { $date }
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
# The hours about noon in which the practice lets one test.
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
plan-load-one = { $load }, { $each } for each of { $area } m², in one vessel
plan-load-several = { $load }, { $each } for each of { $area } m², { $vessel } in each of { $vessels } vessels
plan-load-stated = the campaign file says { $stated }
# From and up to which temperature of the water its readings count.
plan-start = counts from
plan-start-above = { $difference } above the air, such as { $start } in air of { $air }
plan-stop = counts up to
plan-stop-text = { $stop }; water boils at { $boiling } here
# In the unit of the tester's thermometer, with °C or K in brackets.
plan-temperature = { $temperature } { $unit } ({ $celsius } °C)
plan-difference = { $difference } { $unit } ({ $kelvin } K)
# To turn the cooker to the sun.
plan-aim = aim
plan-aim-unknown = acceptance_half_angle_deg is not stated under [cooker], so no times are given. Common practice, no published source: a shallow many-sided reflector about every 45 minutes, in which the sun moves about 11°, a sharp dish every 10 to 15.
plan-aim-no-time = no time of this day can be used
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = at { $clocks } and then no more: { $angle }° are enough for the whole window
plan-aim-drive = all the time, by a drive: the sun moves { $angle }° in under { $time }
plan-aim-at = at { $clocks }; the sun moves { $angle }°, the acceptance half angle, in that time ({ $minutes } min)
plan-aim-every = every { $minutes } min from { $first }; the sun moves { $angle }°, the acceptance half angle, in that time

## Field sheet: what is missing

# Two of these follow each other. { $missing }: "9 more intervals and 1 more day".
plan-missing = Still missing: { $missing }.
plan-missing-nothing = Intervals and days are enough already.
plan-gives-none = This day can give none.
plan-gives = This day can give { $most ->
        [one] { $most } ten-minute interval
       *[other] { $most } ten-minute intervals
    } at most.
plan-gives-by-heating = This day can give { $most ->
        [one] { $most } ten-minute interval
       *[other] { $most } ten-minute intervals
    } at most; one heating of this load about { $heating }, then start again with fresh water.

## Field sheet: before the first reading

check-shade = no shade on the cooker until the end
check-wind = wind light: smoke drifts, leaves still
check-weighed = water weighed, not poured by the cup
check-sensor = sensor in the water, 10 mm above the bottom, off the wall
check-lid = lid on, and it stays on
check-air = air thermometer in the shade, out of the cooker's light
check-irradiance = irradiance sensor clean and facing the sun
check-aimed = aimed, and nothing that burns near the focus
# Lines to write on.
page-sheet-tester = tester
page-sheet-weighed = water weighed, kg

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = clock
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
sheet-force = { $number } { $sign } ({ $speeds } m/s)
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
plan-expected = Expected of the cooker as rated so far, Ps(50) = { $power } W ± { $expanded } W (95 %): { $load } heated from { $start } under a clear sky, in air of { $air } as in its tests; with its 95 % range. Water well below that speaks of haze, wind, a wrong aim or a loose lid.
# The models behind the numbers.
plan-models = Clear sky after Ineichen and Perez 2002 for { $elevation } m, Linke turbidity { $turbidity } (usual for a clear sky); haze and dust give less. Sun after NREL/TP-560-34302; a level horizon.
plan-models-stated = Clear sky after Ineichen and Perez 2002 for { $elevation } m, Linke turbidity { $turbidity } (as stated); haze and dust give less. Sun after NREL/TP-560-34302; a level horizon.
page-sheet-caution = Caution.
caution-field-sheet = Never look into the focus or at the sun. Hot metal and steam burn: gloves, lid away from you. Keep away children and all that burns; stay with the cooker; turn it from the sun before you reach in; tie it down against wind. Shade and water for yourself. Throw the test water away. Local codes and licensed practice come first.
