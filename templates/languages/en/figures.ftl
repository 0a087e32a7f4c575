# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = temperature difference Td, water minus ambient, K
# Upright, up to 45 letters.
figure-power = standardised cooking power Ps, W
figure-power-estimated = Ps, W, with irradiance estimated
# In an empty figure.
figure-nothing-to-plot = irradiance not measured, so there is nothing to plot
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W at 50 K
# The key above the figure: four names beside each other, or in two rows where they are long.
figure-key-used = used intervals ({ $count })
figure-key-aside = set aside ({ $count })
# A line in two bands: the inner one of the scatter, the outer one of the instruments, too.
figure-key-line = line; 95 %: scatter, with instruments
figure-key-single = 95 % of one interval

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = temperature difference Td, K
figure-start = local time at the start
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = expected, standard deviations
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps minus line, W
figure-band = line with 95 % band, W
# A day in a key.
figure-day = { $day } { $month }

## Figures: a run over the day

# Upright, up to 20 letters.
figure-temperature = temperature, °C
# Upright, up to 16 letters.
figure-irradiance = irradiance, W/m²
# Upright, up to 11 letters.
figure-wind = wind, m/s
figure-clock = local clock time
# Names of bars: what it is, and for how long in all.
strip-used = used: { $time }
strip-aside = { $reason }: { $time }
# At the end of a curve.
figure-water = water
figure-ambient = ambient
# In an empty figure.
figure-not-measured = not measured
