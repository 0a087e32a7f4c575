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
under = under { $number }
list = { $first } and { $last }
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
attached-log = Log, byte for byte as it was read
attached-photo = Photo of the cooker, as it stands in the report
attached-rating = All results as data, in full precision
attached-intervals = One row an interval, used and set aside
