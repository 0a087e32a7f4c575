
## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log }: the rows were not in order of time and have been sorted
notice-repeated-times = { $log }: { $rows ->
        [one] { $rows } row
       *[other] { $rows } rows
    } with the time of an earlier row left out; the first counts
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
    } in column "{ $column }" beyond the points of its calibration, by the nearest straight line
notice-quantity-in-both = { $quantity } is in { $log } and in { $weather }; that beside the cooker counts
notice-weather-in-part = { $weather } covers a part of { $log } only; check the clocks of both (time_zone, weather_clock_offset_s)
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
notice-sensors-apart = { $log }: the sensors of { $quantity } are more than { $apart } K apart at { $readings ->
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
notice-trimmed = { $log }: { $readings ->
        [one] { $readings } reading
       *[other] { $readings } readings
    } before the run's start or after its end left out
notice-no-intervals = { $log }: no two water readings are 9 to 11 minutes apart, so there is no interval; log at steps that add up to ten minutes
notice-idle-exclusion = { $log }: the excluded span { $from } to { $to } meets no interval; check its times
notice-stall = { $log }: the water gains less than half of what the line says from { $spans }, as under a cloud, where the sky is stated to be cloudless; look at your notes, and at the aim
# A span of clock times: from 11:20 to 11:40.
notice-span = { $from } to { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = between { $cold } and { $hot }
danger-measured = food safety: in { $run } the water was { $zone } for { $time }; food must not stay { $zone } for more than { $longest } in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove
danger-predicted = food safety: { $predicted }; food must not stay { $zone } for more than { $longest } in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove
danger-both = food safety: in { $run } the water was { $zone } for { $time }, and { $predicted }; food must not stay { $zone } for more than { $longest } in all (USDA FSIS, WHO), where bacteria grow: cook smaller amounts, begin with hot water, and keep meat, fish, eggs, milk and cooked rice for a stronger sun or another stove
# What the line says, within the sentences above.
danger-never = by the line the load tested does not get to { $hot }
danger-takes = by the line the load tested takes about { $time } to { $hot } ({ $shortest } to { $longest })
danger-takes-open = by the line the load tested takes about { $time } to { $hot } ({ $shortest } or more, or it does not get there)
notice-above-film = at ambient temperature the line takes up { $share } % of the sunlight intercepted, more than a reflective film sends on (86 %; common practice, no published source); check intercept area, mass of water and irradiance
notice-plane-assumed = the plane of the irradiance sensor is not stated and taken as normal to the beam; state it under [instruments.irradiance]
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = uncertainty not stated, so the most cautious instrument is taken: { $taken }; state class or uncertainty under [instruments]
notice-instrument-taken = { $quantity } by a { $class }
notice-date-differs = { $log }: the run's date is given as { $stated }, its readings begin on { $found }; the readings count

## How the logs were read

quantity-time = time
quantity-date = date
quantity-clock = clock time
quantity-elapsed = elapsed time
quantity-water = water temperature
quantity-ambient = ambient temperature
quantity-irradiance = irradiance
quantity-wind = wind speed
skip-before-header = before the header
skip-units-row = units under the header
skip-between = between header and readings
skip-remark = remark
skip-blank = blank
skip-header-again = header again
skip-before-header-again = before a repeated header
skip-footer = after the last reading
skip-cut-off = cut off at the end of the file
skipped-more = { $lines } and { $more } more
skipped-lines = { $count ->
        [one] line { $lines } left out: { $reason }
       *[other] lines { $lines } left out: { $reason }
    }
# Labels and texts of a list of facts about a log.
log-form = form
log-form-text = { $written_in }; header on line { $line }; decimal { $mark }
log-time-text = time: { $format }, as in "{ $example }"; zone { $zone }
log-clock = clock
log-clock-text = { $seconds } s added to all times
log-not-read = not read
log-readings = { $readings ->
        [one] { $readings } reading from { $from } to { $to }
       *[other] { $readings } readings from { $from } to { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } reading from { $from } to { $to }, mostly one every { $step } s
       *[other] { $readings } readings from { $from } to { $to }, mostly one every { $step } s
    }
# How a column was understood: water temperature (synonym), °C (header).
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }); { $corrections }
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
order-first-row = the first row
order-same-day = the same day in any order
order-only-following = the only order in which day follows on day
order-run-date = the run's date
order-year-month-day = year-month-day
order-day-month-year = day-month-year
order-month-day-year = month-day-year
