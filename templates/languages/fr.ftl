# French (français), for West Africa and France. Not yet checked by a speaker.
#
# Words kept to: run = essai, interval = intervalle, reading = relevé, used = retenu, set
# aside = écarté, rating = évaluation, finding = constat, the practice = la norme, irradiance
# = éclairement, line = droite, scatter = dispersion, budget = bilan, load = charge, pot =
# marmite, vessel = récipient, to aim = orienter, focus = foyer, stove = fourneau.
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

decimal-mark = ,
list = { $first } et { $last }
# Between two clauses of a sentence.
clause-break = { " ; " }
# As in English
date = { $day } { $month } { $year }
month-1 = janvier
month-2 = février
month-3 = mars
month-4 = avril
month-5 = mai
month-6 = juin
month-7 = juillet
month-8 = août
month-9 = septembre
month-10 = octobre
month-11 = novembre
month-12 = décembre

## What is attached to a report, one line each

attached-campaign = Fichier de campagne : ce qui a été essayé, où et avec quoi
attached-log = Journal, octet pour octet tel qu’il a été lu
attached-photo = Photo du cuiseur, telle qu’elle figure dans le rapport
attached-rating = Tous les résultats sous forme de données, en pleine précision
attached-intervals = Une ligne par intervalle, retenu ou écarté
attached-comparison = Comparaison sous forme de données, en pleine précision
attached-pairs = Une ligne par paire de campagnes
attached-plan = Plan de la journée sous forme de données
checkable = Les données sont dans ce PDF. Chacun peut le vérifier : « simmerline verify FICHIER », version { $version }, le recompose à partir d’elles et dit si c’est le fichier émis.
checkable-from = Les données sont dans ce PDF. Chacun peut le vérifier : « simmerline verify FICHIER », version { $version } (depuis { $address }), le recompose à partir d’elles et dit si c’est le fichier émis.
checkable-not = Ce PDF ne contient pas de données ; personne ne peut donc le vérifier seul. Il imprime le SHA-256 de chaque fichier sur lequel il repose.

# The rating: page one, conditions, runs, intervals, the line, tests of the dry vessel.
#
# Standardised cooking power is "Ps", the temperature difference between water and ambient
# "Td", the rating "Ps(50)": symbols stay as they are in every language.

## Counts, each within several of the sentences below
#
# Where a language needs them in another case, write them into the sentence instead.

counted-intervals = { $intervals ->
    [one] { $intervals } intervalle
   *[other] { $intervals } intervalles
}
counted-used = { $intervals ->
    [one] { $intervals } intervalle retenu
   *[other] { $intervals } intervalles retenus
}
counted-days = { $days ->
    [one] { $days } jour
   *[other] { $days } jours
}
# Of the line: points less two.
counted-freedom = { $freedom ->
    [one] { $freedom } degré de liberté
   *[other] { $freedom } degrés de liberté
}

## Every page

report-kind = Rapport d’essai de cuiseur solaire
report-kind-indicative = Rapport d’essai de cuiseur solaire : indicatif
report-kind-not-valid = Rapport d’essai de cuiseur solaire : non valide
report-kind-no-rating = Rapport d’essai de cuiseur solaire : sans évaluation
report-kind-estimated = Rapport d’essai de cuiseur solaire : indicatif, éclairement estimé
# { $title } is the tester's own.
report-title-indicative = { $title } (indicatif)
report-title-not-valid = { $title } (non valide)
report-title-no-rating = { $title } (pas d’évaluation)
report-title-estimated = { $title } (indicatif, éclairement estimé)
report-invented = Données inventées, pour démonstration
report-statement = Les résultats ne valent que pour le cuiseur tel qu’essayé. Ne reproduire qu’en entier.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = éclairement estimé
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Rapport [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = page [page] sur [pages]
letterhead-client = STILL TO TRANSLATE
letterhead-client-contact = STILL TO TRANSLATE
letterhead-number = STILL TO TRANSLATE
letterhead-issued = STILL TO TRANSLATE
sign-tested = STILL TO TRANSLATE
sign-authorised = STILL TO TRANSLATE
sign-date = STILL TO TRANSLATE
letterhead-hashes = STILL TO TRANSLATE
letterhead-hashes-more = STILL TO TRANSLATE

## Page one: how far the rating conforms

level-conforms = Conforme
level-conforms-with-notes = Conforme avec remarques
level-indicative = Indicatif seulement
level-not-valid = Non valide
level-no-rating = Pas d’évaluation
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = STILL TO TRANSLATE
headline-conforms-with-notes = STILL TO TRANSLATE
# Sous l’une ou l’autre des deux : sur quoi elles reposent.
headline-conforms-rests-on = STILL TO TRANSLATE
headline-indicative = STILL TO TRANSLATE
headline-indicative-missing = STILL TO TRANSLATE
headline-not-valid = STILL TO TRANSLATE
headline-no-rating-missing = STILL TO TRANSLATE
headline-without-rating = STILL TO TRANSLATE
headline-counts = STILL TO TRANSLATE
headline-counts-no-line = STILL TO TRANSLATE
# What is still missing.
missing-intervals = { $intervals ->
    [one] { $intervals } intervalle de plus
   *[other] { $intervals } intervalles de plus
}
missing-days = { $days ->
    [one] { $days } jour de plus
   *[other] { $days } jours de plus
}
missing-intervals-and-days = { missing-intervals } et { missing-days }

## Page one: the number

headline-label = Puissance de cuisson normalisée Ps(50)
# Beside the number and its ±; 95 % is the level of confidence.
headline-unit = W (95 %)
headline-unit-one-day = W (un jour)
headline-what-it-is = STILL TO TRANSLATE
page-no-rating = pas d’évaluation
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = éclairement estimé { $way }
headline-horizontal = STILL TO TRANSLATE
headline-plane-not-stated = STILL TO TRANSLATE
headline-one-day = STILL TO TRANSLATE
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-extrapolated = une extrapolation : 50 K se trouve hors de ce qui a été observé
headline-interval = STILL TO TRANSLATE
headline-interval-one-day = STILL TO TRANSLATE
fact-delivers = STILL TO TRANSLATE
fact-took-up = STILL TO TRANSLATE
fact-took-up-estimated = STILL TO TRANSLATE
fact-lost = STILL TO TRANSLATE
fact-scaled = STILL TO TRANSLATE
fact-scaled-loses = STILL TO TRANSLATE
fact-good = STILL TO TRANSLATE
fact-per-area = STILL TO TRANSLATE
fact-kitchen = STILL TO TRANSLATE
fact-heats = STILL TO TRANSLATE
fact-may-not-heat = STILL TO TRANSLATE
fact-does-not-heat = STILL TO TRANSLATE
fact-dry = STILL TO TRANSLATE
fact-sure = STILL TO TRANSLATE
fact-parts = STILL TO TRANSLATE
fact-parts-assumed = STILL TO TRANSLATE
fact-drawn-wider = STILL TO TRANSLATE
fact-drawn-unsettled = STILL TO TRANSLATE

## Page one: the rating in plain words

headline-two-kilograms = STILL TO TRANSLATE
headline-heat-ends = STILL TO TRANSLATE
headline-heat-ends-or-boils = STILL TO TRANSLATE
headline-boils-first = STILL TO TRANSLATE
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = de { $degrees }
journey-degrees = { $start } à { $target }
journey-to-boiling = de { $start } à l’ébullition ({ $boiling } ici)
# { $result } as in stagnation-result.
headline-dry = Le récipient à sec est monté à { $difference } K au-dessus de l’air sous { $irradiance } W/m² : { $result } (section { $section }).

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
# As in English
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
# As in English
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation } ; R² = { $r_squared } ; { counted-used } en { counted-days }, Td de { $lowest } à { $highest } K
# R² of points that all have the same power.
undefined = indéfini
figure-title-falling = STILL TO TRANSLATE
figure-title-falling-estimated = STILL TO TRANSLATE
figure-title-rising = STILL TO TRANSLATE
figure-title-rising-estimated = STILL TO TRANSLATE
figure-title-no-line = STILL TO TRANSLATE
# In the figure of page one, beside what they name.
figure-used = STILL TO TRANSLATE
figure-aside = STILL TO TRANSLATE
figure-aside-most = STILL TO TRANSLATE
figure-band-dark = STILL TO TRANSLATE
figure-band-light = STILL TO TRANSLATE
# Read out to those who do not see the figure.
power-line-caption = { $facts }.
power-line-alt = Nuage de points de la puissance de cuisson normalisée en watts selon l’écart de température entre l’eau et l’air ambiant en kelvins. { $facts } ; écartés : { $aside }. La droite indique { $power } watts à 50 kelvins.
power-line-estimated = Éclairement estimé : { $text }
no-line-facts = { counted-used }, écartés : { $aside } ; aucune droite ne peut être ajustée
no-line-alt = Nuage de points de la puissance de cuisson normalisée selon l’écart de température : { $facts }.
page-findings = STILL TO TRANSLATE
conditions-title = STILL TO TRANSLATE
conditions-track = STILL TO TRANSLATE
brief-irradiance = Éclairement
brief-irradiance-change = Variation de l’éclairement dans un intervalle
brief-wind = Vent moyen, et longues rafales
brief-ambient = Température ambiante moyenne
brief-water-above = Eau au-dessus de l’ambiante, aux deux bouts
brief-water-below = Eau en dessous de l’ébullition, aux deux bouts
brief-water-fixed = Température de l’eau, aux deux bouts
brief-solar-time = Heure solaire
page-before-you-cook = Avant de cuisiner.
headline-caution = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et cette évaluation ne dit rien de la sécurité des aliments. Lisez les mises en garde de la section { $section } avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.
headline-caution-no-rating = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et ces chiffres ne disent rien de la sécurité des aliments. Lisez les mises en garde de la section { $section } avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.
# What others measured, on page two, to hold a rating against.
yardstick-own = STILL TO TRANSLATE
yardstick-parabolic = STILL TO TRANSLATE
yardstick-box = STILL TO TRANSLATE
yardstick-caution = STILL TO TRANSLATE

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = on a retenu { counted-intervals }, la norme en demande { $least }
finding-too-few-intervals-own = on a retenu { counted-intervals }, la limite propre à la campagne en demande { $least }
finding-too-few-intervals-remedy = { missing-intervals } que l’on puisse retenir
finding-too-few-days = intervalles retenus en { counted-days }, la norme en demande { $least }
finding-too-few-days-own = intervalles retenus en { counted-days }, la limite propre à la campagne en demande { $least }
finding-too-few-days-remedy = des intervalles retenus sur { missing-days }
finding-no-rating = aucune droite ne peut être ajustée : il y faut trois intervalles retenus avec éclairement, à des écarts de température différents
finding-no-rating-remedy = davantage d’intervalles que l’on puisse retenir, de la température ambiante jusque près de l’ébullition
finding-no-rating-remedy-irradiance = mesurer l’éclairement ; sans lui, la puissance ne peut pas être normalisée
finding-r-squared-low = R² vaut { $r_squared }, moins que { $least } ; la norme se contenterait d’une remarque, pas ce rapport
finding-r-squared-low-own = R² vaut { $r_squared }, moins que la limite propre à la campagne de { $least }
finding-r-squared-low-remedy = une orientation plus régulière, un ciel plus clair et moins de vent ; un capteur qui ne touche pas la marmite
# D’une droite à laquelle ses points s’ajustent bien.
finding-r-squared-low-remedy-flat = R² est bas parce que la puissance ne baisse guère avec la température, non parce que les points se dispersent, et le ± dit à quel point le chiffre est sûr ; une plus grande étendue de température de l’eau élève R²
finding-line-not-falling = la puissance ne baisse pas quand l’eau devient plus chaude, ce que ne fait aucun cuiseur réel
finding-line-not-falling-remedy = vérifier que la température de l’eau est bien celle de l’eau, et couvrir une plage de températures plus large
finding-no-useful-heat = la droite indique { $power } W à { $difference } K : là, l’eau perd de la chaleur
finding-no-useful-heat-remedy = vérifier que les relevés sont ceux d’une eau que l’on chauffe, cuiseur orienté
finding-extrapolated = { $difference } K se trouve hors des écarts de température observés, de { $lowest } à { $highest } K
finding-extrapolated-remedy = des intervalles retenus de part et d’autre de { $difference } K
# { $runs }: a list of finding-load-off-run.
finding-load-off = la charge s’écarte de plus de { $tolerance } % de { $load } kg/m² dans { $runs }
# As in English
finding-load-off-run = { $run } ({ $load } kg/m²)
finding-load-off-remedy = peser { $load } d’eau pour chaque m² de surface d’interception, ou corriger cette surface
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = le vent n’a pas été mesuré dans { $runs }
finding-wind-not-measured-remedy = mesurer le vent à côté du cuiseur, à sa hauteur
finding-wind-estimated = le vent est une estimation à vue dans { $runs }, à un degré près de l’échelle de Beaufort
finding-irradiance-estimated = l’éclairement n’a pas été mesuré près du cuiseur dans le plan normal au rayonnement direct, mais estimé { $way }
finding-irradiance-estimated-remedy = mesurer l’éclairement à côté du cuiseur, avec un capteur tourné vers le soleil
finding-irradiance-missing = l’éclairement n’a pas été mesuré dans { $runs }, dont les intervalles ne peuvent pas être normalisés et ne comptent pas pour la droite
finding-irradiance-missing-remedy = mesurer l’éclairement dans le plan normal au rayonnement direct
finding-irradiance-horizontal = l’éclairement a été mesuré dans le plan horizontal, la norme demande le plan normal au rayonnement direct ; il y est d’ordinaire plus élevé, l’évaluation est donc probablement trop élevée
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = monter le capteur de façon qu’il soit tourné vers le soleil comme le cuiseur ; d’ici là, estimate = "from-horizontal" ramène ses relevés face au soleil
finding-irradiance-plane-not-stated = le plan dans lequel l’éclairement a été mesuré n’est pas indiqué ; la norme demande le plan normal au rayonnement direct, qui est supposé
# plane = "normal" et [instruments.irradiance] sont des parties du fichier de campagne et restent telles quelles.
finding-irradiance-plane-not-stated-remedy = indiquer sous [instruments.irradiance] comment le capteur était tenu : plane = "normal" s’il était tourné vers le soleil, plane = "horizontal" s’il était à plat
finding-impossible-gain = dans { counted-used }, l’eau a gagné plus de chaleur que le rayonnement solaire intercepté ; dans le premier, elle a pris { $power } W sur { $sunlight } W
finding-impossible-gain-remedy = vérifier la masse d’eau, la surface d’interception, et les unités de température et d’éclairement
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = limites propres plus larges qu’une exigence : { $limits }
finding-recommendation-relaxed = limites propres plus larges qu’une recommandation : { $limits }
finding-limit-tightened = limites propres plus strictes que la norme : { $limits }
finding-guard = une bande de garde de l’incertitude élargie à chaque limite (norme : aucune)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (norme : { $practice })
# As in English
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = revenir aux limites de la norme : supprimer celles-ci sous [limits] dans le fichier de campagne
finding-excluded-by-tester = l’opérateur a exclu { counted-intervals }
finding-excluded-by-tester-remedy = rien à faire, si la raison donnée dans le fichier de campagne est fondée

## What was tested

section-tested = Ce qui a été essayé
# As in English
page-instruments = Instruments
page-instruments-quantity = grandeur
# As in English
page-instruments-instrument = instrument
page-instruments-uncertainty = incertitude-type

## Conditions

# As in English
section-conditions = Conditions
# Headers of the table.
# As in English
page-conditions-condition = condition
page-conditions-limit = limite
page-conditions-short-name = STILL TO TRANSLATE
page-conditions-standing = portée
page-conditions-observed = STILL TO TRANSLATE
page-conditions-set-aside = écartés
# What is limited. Also within findings.
limit-water-above-ambient = eau au-dessus de l’ambiante moyenne
limit-water-below-boiling = eau en dessous du point d’ébullition local
limit-water-temperature = température de l’eau
limit-ambient = température ambiante moyenne
limit-irradiance-lowest = éclairement le plus bas de l’intervalle
limit-irradiance-highest = éclairement le plus élevé de l’intervalle
limit-irradiance-change = variation de l’éclairement dans l’intervalle
limit-wind-mean = vent moyen
limit-wind-gust = vent maintenu plus de dix minutes (écarte l’essai)
limit-solar-time-start = heure solaire au début
limit-solar-time-end = heure solaire à la fin
limit-solar-time = STILL TO TRANSLATE
limit-interval = durée d’un intervalle
limit-load = eau par m² de surface d’interception
limit-load-tolerance = écart admis de la charge
limit-intervals = intervalles retenus
limit-days = jours avec des intervalles retenus
limit-r-squared = R² de la droite
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = exigence
standing-recommendation = recommandation
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = propre, pour une exigence
standing-own-recommendation = propre, pour une recommandation
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = pas de droite
# Of gusts.
conditions-never = jamais
conditions-gust = pendant { $time } au plus
conditions-no-interval = aucun intervalle
conditions-not-measured = non mesuré
conditions-observed = STILL TO TRANSLATE
conditions-r-squared = STILL TO TRANSLATE
# "Own" as in standing-own-requirement.
conditions-own = Les limites marquées « propre » sont celles de la campagne et s’écartent de la norme.
conditions-guard = Une bande de garde est en vigueur : une valeur ne compte comme respectant une limite que si elle la respecte avec toute son incertitude, selon la règle de décision à la fin.

## Runs

section-runs = Essais
runs-axes = STILL TO TRANSLATE
runs-axes-but-clock = STILL TO TRANSLATE
runs-axes-own-start = STILL TO TRANSLATE
runs-shaded = STILL TO TRANSLATE
runs-wind = STILL TO TRANSLATE
runs-no-wind = STILL TO TRANSLATE
runs-no-irradiance = STILL TO TRANSLATE
runs-lanes = STILL TO TRANSLATE
runs-predicted = STILL TO TRANSLATE
run-title = Essai { $number }, { $date }
run-used = STILL TO TRANSLATE
run-load = STILL TO TRANSLATE
run-aimed = STILL TO TRANSLATE
run-predicted = STILL TO TRANSLATE
run-tester = STILL TO TRANSLATE
run-hole = Pas d’intervalle de { $from } à { $to } : il n’y a pas là deux relevés de l’eau séparés de { $shortest } à { $longest } minutes.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Tracés selon l’heure locale de { $from } à { $to } : eau entre { $coldest } et { $hottest } degrés Celsius, avec la température ambiante ; { $irradiance } ; { $wind }. Retenus et ombrés : { $used } sur { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Écartés : { $reasons }.
run-alt-none-aside = Rien n’est écarté.
# As in English
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = STILL TO TRANSLATE
run-alt-not-predicted = La droite ne prédit rien pour cet essai.
run-alt-irradiance = éclairement entre { $lowest } et { $highest } watts par mètre carré
run-alt-no-irradiance = éclairement non mesuré
run-alt-wind = vent entre { $lowest } et { $highest } mètres par seconde
run-alt-no-wind = vent non mesuré

## Intervals

section-intervals = Intervalles
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = heure locale
page-intervals-solar = solaire
page-intervals-water = eau, °C
# As in English
page-intervals-ambient = amb., °C
page-intervals-irradiance = éclairement, W/m²
page-intervals-range = STILL TO TRANSLATE
page-intervals-wind = vent, m/s
# As in English
page-intervals-power = P, W
# As in English
page-intervals-difference = Td, K
# As in English
page-intervals-standardised = Ps, W
interval-no-irradiance = non normalisé : pas d’éclairement
page-intervals-continued = STILL TO TRANSLATE
intervals-note = STILL TO TRANSLATE
intervals-dots = STILL TO TRANSLATE
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = l’eau était encore trop proche de l’ambiante
reason-water-above-window = l’eau était trop proche de l’ébullition
reason-ambient-out-of-range = l’air était trop froid ou trop chaud
reason-irradiance-low = le soleil était trop faible
reason-irradiance-high = le soleil était trop fort
reason-irradiance-unsteady = le soleil était irrégulier
reason-wind-high = le vent était trop fort
reason-outside-solar-window = l’heure solaire était trop matinale ou trop tardive
reason-reading-gap = des relevés manquaient
reason-excluded-by-tester = l’opérateur a exclu cette période
reason-not-cloudless = l’opérateur n’indique pas que le ciel était sans nuages
lane-water-below-window = STILL TO TRANSLATE
lane-water-above-window = STILL TO TRANSLATE
lane-ambient-out-of-range = STILL TO TRANSLATE
lane-irradiance-low = STILL TO TRANSLATE
lane-irradiance-high = STILL TO TRANSLATE
lane-irradiance-unsteady = STILL TO TRANSLATE
lane-wind-high = STILL TO TRANSLATE
lane-outside-solar-window = STILL TO TRANSLATE
lane-reading-gap = STILL TO TRANSLATE
lane-excluded-by-tester = STILL TO TRANSLATE
lane-not-cloudless = STILL TO TRANSLATE
lane-not-normalised = STILL TO TRANSLATE

## Regression and uncertainty

section-regression = Régression et incertitude
regression-none = Aucune droite ne peut être ajustée : il y faut au moins trois intervalles retenus avec éclairement, à des écarts de température différents.
regression-method = STILL TO TRANSLATE
# Labels, and what stands beside them.
regression-line = droite
regression-intercept = ordonnée à l’origine a
regression-watts = { $value } W, erreur type { $error } W
regression-slope = pente b
regression-watts-per-kelvin = { $value } W/K, erreur type { $error } W/K
regression-residual = STILL TO TRANSLATE
regression-residual-text = STILL TO TRANSLATE
# As in English
regression-points = points
regression-points-text = { counted-intervals } en { counted-days }, { counted-freedom }
residuals-caption = STILL TO TRANSLATE
# Read out to those who do not see the figure.
residuals-alt = Résidus autour de la droite en watts, selon l’écart de température en kelvins et selon l’heure locale, avec une marque pour chaque jour ; écart-type { $deviation } watts ; { $outside ->
    [one] { $outside } point sur { $points } est à plus de deux fois cette valeur de la droite.
   *[other] { $outside } points sur { $points } sont à plus de deux fois cette valeur de la droite.
}
page-scatter = STILL TO TRANSLATE
page-uncertainty = Incertitude de Ps(50)
# Headers of a table of six columns.
# As in English
page-uncertainty-source = source
page-uncertainty-of-source = son incertitude-type
# Type A or B of the GUM.
# As in English
page-uncertainty-type = type
page-uncertainty-sensitivity = sensibilité
page-uncertainty-of-rating = STILL TO TRANSLATE
page-uncertainty-factor = STILL TO TRANSLATE
page-uncertainty-part = part de ±²
section-heat-balance = Bilan thermique
page-balance-quantity = grandeur
balance-what = L’eau reçoit ce que le cuiseur gagne du soleil moins ce qu’il perd dans l’air : P = g·G − u·Td, avec l’éclairement G et l’écart de température Td. La puissance peut donc être dite à tout éclairement. L’évaluation met les pertes à l’échelle du soleil ; ce bilan ne le fait pas.
# Above a column of values. "One day": it was tested on one day only, so it is no 95 % range.
balance-spread = STILL TO TRANSLATE
balance-spread-one-day = STILL TO TRANSLATE
balance-gain = gain solaire, g
balance-gain-text = { $value } m²
balance-loss = perte dans l’air, u
balance-loss-text = { $value } W/K
balance-power = puissance à 700 W/m² et 50 K, 700·g − 50·u
balance-power-text = { $value } W
balance-ratio = rapport optothermique, g/u
balance-ratio-text = { $value } K m²/W
balance-ratio-none = non donné : la perte peut être nulle
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = STILL TO TRANSLATE
balance-counts-vessels = Ici, le gain, la perte et la puissance sont ceux de l’eau et des récipients, qui comptent pour { $heat } J/K : { $basis }. Tout ce que ce rapport dit par ailleurs de puissance, de marmites et de mois ne vaut que pour l’eau.
balance-scaling-adds = Avec cette perte, la mise à l’échelle proportionnelle de l’évaluation, de { $mean } W/m² à 700 W/m², ajoute { $power } W à Ps(50).
balance-scaling-takes = Avec cette perte, la mise à l’échelle proportionnelle de l’évaluation, de { $mean } W/m² à 700 W/m², retire { $power } W à Ps(50).
balance-caption = STILL TO TRANSLATE
balance-caption-one-day = STILL TO TRANSLATE
# Behind a caption.
balance-beyond = Intervalles au-delà des bords : { $count }.
# Read out to those who do not see the figure.
balance-alt = Nuage de points de la puissance sur l’éclairement, en mètres carrés, selon l’écart de température sur l’éclairement, de { $lowest } à { $highest } kelvin mètre carré par watt. Points : { counted-intervals } auxquels la droite est ajustée ; croix : { $others } autres. La droite part de { $gain } mètres carrés, sans écart de température ; la perte est de { $loss } watts par kelvin.
# Axes and key of the figure: there is little room.
balance-axis-difference = écart de température sur éclairement, Td/G, K m²/W
balance-axis-power = puissance sur éclairement, P/G, m²
balance-key-used = ajustés ({ $count })
balance-key-others = autres ({ $count })
balance-key-line = g − u·Td/G, bande à 95 % avec instruments
balance-key-line-one-day = g − u·Td/G, bande d’un seul jour avec instruments
balance-none-irradiance = Le gain et la perte ne peuvent pas être ajustés : l’éclairement n’a pas été mesuré.
balance-none-few = Le gain et la perte ne peuvent pas être ajustés : il faut au moins trois intervalles aux relevés sûrs ; trouvés : { $intervals }.
balance-none-alike = Le gain et la perte ne se distinguent pas : l’écart de température et l’éclairement ont gardé presque le même rapport dans tous les intervalles.
balance-source = STILL TO TRANSLATE

## Cooking

section-cooking = Ce que cela signifie pour la cuisson
page-cooking-water = eau
# [journey] is put in by the program: "from 20 to 95 °C", the message journey.
page-cooking-time = durée [journey]
page-cooking-range = plage
page-cooking-boiling = jusqu’à l’ébullition
page-foods-food = aliment
page-foods-specific-heat = chaleur massique
page-foods-cooked = cuit à
page-foods-amount = quantité
page-foods-range = plage
page-year = Les jours clairs au fil de l’année
page-fuel = STILL TO TRANSLATE
page-dry = Récipient à sec
# As in English
page-dry-date = date
page-dry-plateau = palier
# As in English
page-dry-air = air
page-dry-irradiance = éclairement
page-dry-difference = écart par W/m²
page-dry-notes = remarques
# As in English
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimé
# As in English
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = STILL TO TRANSLATE
page-assumed = Hypothèses

## Cautions

section-cautions = Mises en garde

## Provenance

section-provenance = Écarts, remarques et provenance
page-deviations = STILL TO TRANSLATE
page-tester-notes = Remarques de l’opérateur
page-notices = Avis à la lecture des journaux
page-logs = Comment les journaux ont été lus
page-made-with = Réalisé avec
page-sources = STILL TO TRANSLATE
# SHA-256: digits that change when a file changes.
page-inputs = STILL TO TRANSLATE
# A photo among the inputs.
input-photo = { $file }, telle que dans ce rapport
# { $file }: its name, or input-photo.
input-outside = { $file }, hors du dossier de la campagne

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = non indiqué

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Cuiseur boîte
cooker-panel = Cuiseur à panneaux
cooker-concentrating = Cuiseur à concentration
cooker-tube = Cuiseur à tube
aperture-circle = cercle, { $diameter } m de diamètre
aperture-rectangle = rectangle, { $width } m sur { $height } m
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = polygone régulier, { $sides } côtés, { $across } m entre sommets
aperture-outline = contour de { $points } points
# { $shape }: one of the four above. The beam is the light that comes straight from the sun.
aperture-off-normal = { $shape }, rayonnement direct à { $degrees }° de sa normale

## Ways to estimate irradiance
#
# Each goes on after "irradiance estimated", and also stands alone after a comma.

estimated-clear-sky = par un modèle de ciel clair (Ineichen et Perez 2002)
estimated-from-horizontal = d’après un capteur posé à plat (Erbs, Klein et Duffie 1982)
estimated-station = d’après le journal d’une station voisine
estimated-solar-panel = d’après le courant de court-circuit d’un panneau solaire

## Classes of instruments

# Also within budget-assumed and notice-instrument-taken: "assumed a kitchen scale".
class-pyranometer-a = pyranomètre de classe A
class-pyranometer-b = pyranomètre de classe B
class-pyranometer-c = pyranomètre de classe C
class-reference-cell = cellule de référence
class-solar-panel = panneau solaire, par son courant de court-circuit
class-hand-held-meter = appareil de mesure à main
class-thermocouple-t-1 = thermocouple de type T, classe 1
class-thermocouple-t-2 = thermocouple de type T, classe 2
class-thermocouple-k-1 = thermocouple de type K, classe 1
class-thermocouple-k-2 = thermocouple de type K, classe 2
class-thermocouple-j-1 = thermocouple de type J, classe 1
class-thermocouple-j-2 = thermocouple de type J, classe 2
class-pt100-a = Pt100, classe A
class-pt100-b = Pt100, classe B
class-kitchen-thermometer = thermomètre de cuisine
class-oven-dial = thermomètre de four à cadran
class-measuring-jug = verre doseur
class-platform-scale = balance à plateforme
class-kitchen-scale = balance de cuisine
class-watch = montre, lue à la main
class-logger = horloge d’un enregistreur
# What the uncertainty of a class follows from. 95 %: level of confidence.
basis-for-95-percent = ± { $limit } % pour 95 %
basis-within-percent = à ± { $limit } % près
basis-within-kelvin = à ± { $limit } K près
basis-within-kelvin-read = à ± { $limit } K près, lu à { $step } K
basis-within-seconds = à ± { $limit } s près

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
# As in English
subtitle-cooker = { $cooker }, { $area } m²
# As in English
subtitle-site = { $site }, { $elevation } m
subtitle-tester = opérateur : { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = du { $first } au { $last }
# "28 September to 3 October 2026".
dates-of-a-year = du { $day } { $month } au { $last }
dates = du { $first } au { $last }

## What was tested
#
# Labels stand at the left in a column of about 18 letters; longer ones break.

tested-photo = Le cuiseur tel qu’essayé.
# Read out to those who do not see it.
tested-photo-alt = Photographie du cuiseur { $cooker }
tested-cooker = Cuiseur
tested-name = nom
# As in English
tested-identification = identification
# As in English
tested-type = type
tested-area = surface d’interception
# As in English
tested-area-text = { $area } m²
tested-aperture = ouverture
# As in English
tested-description = description
tested-condition = état
tested-received = reçu le
tested-mass = masse
tested-cost = coût
# { $currency }: as the tester wrote it.
# As in English
tested-cost-text = { $cost } { $currency }
tested-cost-no-currency = { $cost } (monnaie non indiquée)
tested-load = Charge
tested-water = eau
tested-per-area = par surface d’interception
tested-per-area-text = STILL TO TRANSLATE
tested-per-area-own = { $load } kg/m² (limite propre : { $own } kg/m²)
tested-vessels = récipients
tested-environment = Environnement des intervalles retenus
environment-ambient = air ambiant
environment-irradiance = éclairement
environment-wind = vent
environment-numbers = moy. { $mean }, relevés { $range }
environment-none = aucun intervalle retenu
# As in English
tested-site = Site
tested-place = lieu des essais
# As in English
tested-position = position
# As in English
tested-position-text = { $latitude }, { $longitude }, { $elevation } m
# As in English
tested-north = { $degrees }° N
# As in English
tested-south = { $degrees }° S
# As in English
tested-east = { $degrees }° E
tested-west = { $degrees }° O
# { $boiling }: "95.2 °C".
tested-boiling = l’eau bout à
tested-boiling-by-pressure = { $boiling }, d’après { $pressure } hPa mesurés
tested-boiling-by-elevation = { $boiling }, d’après l’altitude
tested-time-zone = fuseau horaire
tested-test = Essais
tested-method = méthode
# The title of the standard stands in English.
# As in English
tested-method-text = ASAE { $procedure }, testing and reporting solar cooker performance
# As in English
tested-dates = dates
tested-dates-text = { $dates }, { $runs ->
        [one] { $runs } essai
       *[other] { $runs } essais
    }
tested-tracking = suivi du soleil
# { $minutes }: a number, or a list of numbers.
tested-tracking-text = réorienté toutes les { $minutes } min
tested-issued = rapport établi
tested-parties = Laboratoire et client
tested-laboratory = laboratoire
tested-laboratory-not-stated = nom et adresse non indiqués
tested-tester = opérateur
tested-authorised = autorisé par
tested-client = STILL TO TRANSLATE
tested-contact = STILL TO TRANSLATE
tested-client-data = STILL TO TRANSLATE
tested-sampling = échantillonnage
tested-not-sampled = STILL TO TRANSLATE
tested-others = STILL TO TRANSLATE
tested-others-station = éclairement, du journal d’une station voisine
tested-stated-note = STILL TO TRANSLATE

## What was tested: instruments

tested-water-temperature = température de l’eau
tested-ambient-temperature = température ambiante
tested-wind-speed = vitesse du vent
tested-water-mass = masse d’eau
tested-irradiance-estimated = éclairement, estimé
tested-irradiance-normal = éclairement, normal au rayonnement direct
tested-irradiance-horizontal = éclairement, plan horizontal
tested-irradiance-plane-assumed = éclairement, plan non indiqué, supposé normal au rayonnement direct
instrument-not-measured = non mesuré
# { $description }: the tester's own words; { $id }: a mark or number.
# As in English
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
# As in English
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
instrument-estimated-uncertainty = { $uncertainty } ; { $budget }
instrument-uncertainty-of-model = celle du modèle ; { $budget }
# { $budget }: where it stands.
# As in English
budget-in-section = section { $section }
budget-in-own-report = le bilan d’incertitude est dans son propre rapport
instrument-by-class = selon sa classe, { $basis }
instrument-by-eye = à vue, échelle de Beaufort (WMO-No. 8)
instrument-by-eye-uncertainty = la plage d’un degré, par exemple 0,3 à 1,5 m/s
uncertainty-percent = { $percent } % du relevé
# As in English
uncertainty-kelvin = { $kelvin } K
# As in English
uncertainty-speed = { $speed } m/s
# As in English
uncertainty-seconds = { $seconds } s
tested-instruments-note = STILL TO TRANSLATE

## Regression and uncertainty: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = composée
budget-root = racine de la somme des carrés
# The rating with its expanded uncertainty.
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (un jour)
budget-scatter = dispersion autour de la droite
budget-scatter-text = { $deviation } W par intervalle, { $intervals ->
        [one] { $intervals } intervalle
       *[other] { $intervals } intervalles
    }
budget-reading = lecture de la température de l’eau
budget-reading-text = { $deviation } W par intervalle, { $intervals ->
        [one] { $intervals } intervalle
       *[other] { $intervals } intervalles
    } ; plus que la dispersion observée
budget-days = intervalles et jours
budget-days-text = { $days ->
        [one] { $days } jour, laissé de côté
       *[other] chacun des { $days } jours laissé de côté tour à tour
    }
budget-per-percent = STILL TO TRANSLATE
budget-per-kelvin = STILL TO TRANSLATE
# As in English
budget-percent = { $share } %
budget-tiny = STILL TO TRANSLATE
budget-offset-of = { $known } ; dont le décalage
budget-scale = { $percent } % en comptant depuis { $about }, l’autre part de la même incertitude
# { $uncertainty }: "0.5 K" or "3 % of the reading".
budget-stated = { $uncertainty }, indiqué
# { $class }: one of the messages that begin with class-; { $basis }: one that begins with basis-.
budget-class = { $class } : { $basis }
budget-assumed = supposé, { $class } : { $basis }
# What is in error, in the same table, and in the sentences below.
error-irradiance = éclairement
error-clear-sky = éclairement, estimé
# From the horizontal plane to the plane normal to the beam.
error-conversion = éclairement, ramené face au soleil
# A weather station a few kilometres away.
error-distance = éclairement, à la station
error-water-temperature = température de l’eau, décalage
error-water-scale = température de l’eau, échelle
error-ambient-temperature = température ambiante, décalage
error-ambient-scale = température ambiante, échelle
error-water-mass = masse d’eau
error-specific-heat = chaleur massique de l’eau
error-clock-rate = temps
# What their uncertainty follows from, where it is not the tester's to state.
known-clear-sky = { $percent } % : modèle de ciel clair 5 %, le reste du trouble à ± 2 près
known-conversion = conversion { $percent } %, d’un rayonnement direct connu à un cinquième près
known-distance = { $percent } % pour une station voisine
known-specific-heat = 4186 J/(kg K) à ± { $percent } % près
known-clock-rate = marche de l’horloge à ± { $percent } % près
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = STILL TO TRANSLATE
source-wmo-8 = WMO-No. 8, totaux horaires, pour les classes d’ISO 9060:1990 (étalon secondaire, première, seconde) auxquelles A, B, C de 2018 font suite
source-iec-60584 = IEC 60584-1:2013, tolérance jusqu’à 100 °C
source-iec-60751 = STILL TO TRANSLATE
source-clear-sky = STILL TO TRANSLATE
source-conversion = STILL TO TRANSLATE
source-specific-heat = IAPWS-IF97, 10 °C à 95 °C

## Regression and uncertainty: what the budget comes to

budget-result = STILL TO TRANSLATE
budget-rule = STILL TO TRANSLATE
budget-note-columns = STILL TO TRANSLATE
budget-note-common = STILL TO TRANSLATE
budget-note-thermometer = STILL TO TRANSLATE
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = STILL TO TRANSLATE
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = STILL TO TRANSLATE
budget-note-resolution = STILL TO TRANSLATE
budget-note-resolution-most = STILL TO TRANSLATE

## Regression and uncertainty: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = STILL TO TRANSLATE
drawn-holds = STILL TO TRANSLATE
drawn-apart = STILL TO TRANSLATE
drawn-because-divided = STILL TO TRANSLATE
drawn-because-curved = STILL TO TRANSLATE
drawn-because-limits = STILL TO TRANSLATE
drawn-because-few = STILL TO TRANSLATE
drawn-because-unsettled = STILL TO TRANSLATE
drawn-interval = STILL TO TRANSLATE
drawn-settled-to = STILL TO TRANSLATE

## Regression and uncertainty: what more data would bring

outlook-at-best = STILL TO TRANSLATE
outlook-reached = Les ± { $target } W visés sont atteints.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = Les ± { $target } W visés demandent { $more }, en supposant la dispersion vue jusqu’ici.
outlook-more-one-day = Les ± { $target } W visés demandent { $more }, en supposant la dispersion vue jusqu’ici et que les jours ne diffèrent pas.
outlook-intervals = { $intervals ->
        [one] { $intervals } intervalle retenu de plus
       *[other] { $intervals } intervalles retenus de plus
    }
outlook-intervals-and-days = { $intervals ->
        [one] { $intervals } intervalle retenu de plus
       *[other] { $intervals } intervalles retenus de plus
    } sur { $days ->
        [one] { $days } jour de plus
       *[other] { $days } jours de plus
    }
# { $heaviest }: one of the sentences that follow.
outlook-out-of-reach = Les ± { $target } W visés ne peuvent pas être atteints avec plus d’intervalles : les instruments seuls laissent ± { $least } W. { $heaviest }
heaviest-irradiance = L’éclairement pèse le plus.
heaviest-clear-sky = L’éclairement estimé pèse le plus.
heaviest-conversion = L’éclairement ramené face au soleil pèse le plus.
heaviest-distance = L’éclairement à la station pèse le plus.
heaviest-water-temperature = La température de l’eau pèse le plus.
heaviest-water-scale = L’échelle du thermomètre de l’eau pèse le plus.
heaviest-ambient-temperature = La température ambiante pèse le plus.
heaviest-ambient-scale = L’échelle du thermomètre de l’air ambiant pèse le plus.
heaviest-water-mass = La masse d’eau pèse le plus.
heaviest-specific-heat = La chaleur massique de l’eau pèse le plus.
heaviest-clock-rate = Le temps pèse le plus.
outlook-too-far = Les ± { $target } W visés demanderaient plus d’intervalles que personne n’en mesure, en supposant la dispersion vue jusqu’ici.
outlook-too-far-one-day = Les ± { $target } W visés demanderaient plus d’intervalles que personne n’en mesure, en supposant la dispersion vue jusqu’ici et que les jours ne diffèrent pas.

## Page one, and regression and uncertainty: what limits the number most

limits-most-few-days = STILL TO TRANSLATE
limits-most-days = STILL TO TRANSLATE
limits-most-scatter = STILL TO TRANSLATE
limits-most-resolution = STILL TO TRANSLATE
limits-most-irradiance = STILL TO TRANSLATE
limits-most-estimated = STILL TO TRANSLATE
limits-most-water = STILL TO TRANSLATE
limits-most-ambient = STILL TO TRANSLATE
limits-most-mass = STILL TO TRANSLATE
limits-most-other = STILL TO TRANSLATE

## Regression and uncertainty: days, neighbours and single intervals

days-one = Tous les intervalles retenus sont d’un seul jour : on ne peut pas dire combien les jours diffèrent, cela n’est donc pas dans l’incertitude. Un autre jour peut bien donner un résultat hors de la plage indiquée.
days-too-few-intervals = Trop peu d’intervalles pour distinguer les jours de la dispersion ; ce dont les jours diffèrent n’est pas dans l’incertitude.
days-no-scatter = Les intervalles se trouvent sur les droites de leurs jours sans aucune dispersion, les jours ne peuvent donc pas être testés.
days-test = STILL TO TRANSLATE
# { $numbers }: days-numbers. One of days-left-out and days-left-out-two follows
# after the first three.
days-differ = STILL TO TRANSLATE
days-not-shown = STILL TO TRANSLATE
days-count = STILL TO TRANSLATE
days-count-two = STILL TO TRANSLATE
days-agree = STILL TO TRANSLATE
days-cannot-be-left-out = STILL TO TRANSLATE
neighbours-drift = STILL TO TRANSLATE
neighbours-share = STILL TO TRANSLATE
neighbours-by-turns = STILL TO TRANSLATE
neighbours-not-shown = STILL TO TRANSLATE
influential = STILL TO TRANSLATE
influential-more = STILL TO TRANSLATE
influential-one = STILL TO TRANSLATE

## Provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = STILL TO TRANSLATE
# guard = true est écrit dans le fichier de campagne et reste tel quel.
deviation-guard = STILL TO TRANSLATE
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run } : de { $from } à { $to } exclu par l’opérateur : { $reason }.
deviation-excluded-no-reason = { $run } : de { $from } à { $to } exclu par l’opérateur : aucune raison donnée.
deviation-findings = STILL TO TRANSLATE
deviation-interval = STILL TO TRANSLATE
# Labels stand at the left; there is room for 20 letters.
made-with = STILL TO TRANSLATE
made-issued = établi
made-practice = STILL TO TRANSLATE
made-solar-time = heure solaire
made-solar-time-text = NREL/TP-560-34302, d’après l’heure et la longitude
made-boiling = point d’ébullition
made-boiling-text = atmosphère ISO 2533 là où aucune pression n’a été mesurée, saturation IAPWS-IF97
made-decision = règle de décision
made-decision-text = STILL TO TRANSLATE
made-decision-guarded = STILL TO TRANSLATE
made-decision-wind = vent ± { $wind } m/s
made-decision-no-wind = vent sans elle, car son incertitude n’est pas indiquée
made-irradiance = éclairement
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimé { $way } ; plan normal au rayonnement direct d’après Liu et Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimé { $way }, trouble de Linke { $turbidity } comme indiqué ; plan normal au rayonnement direct d’après Liu et Jordan 1963
made-irradiance-usual = STILL TO TRANSLATE
unchecked-memory = STILL TO TRANSLATE
unchecked-common = STILL TO TRANSLATE
memory-s580 = STILL TO TRANSLATE
memory-decision = STILL TO TRANSLATE
memory-decision-guarded = STILL TO TRANSLATE
memory-iec-60751 = STILL TO TRANSLATE
memory-clear-sky = STILL TO TRANSLATE
memory-conversion = STILL TO TRANSLATE
memory-balance = STILL TO TRANSLATE
memory-dry = STILL TO TRANSLATE
memory-box = STILL TO TRANSLATE
memory-dish = STILL TO TRANSLATE
memory-efficiency = STILL TO TRANSLATE
memory-food = STILL TO TRANSLATE
memory-cautions = STILL TO TRANSLATE
report-end = Fin du rapport { $number }
balance-one-day = tout a été mesuré en un seul jour, ou en des jours dont aucun ne peut être laissé de côté, les plages du gain et de la perte ne sont donc pas des plages à 95 %
balance-one-day-remedy = faites des essais d’autres jours
balance-irradiance-hardly-varied = l’éclairement n’a guère varié ({ $range } W/m²) : le gain et la perte ne se distinguent que par la température de l’eau, et ce qui est dit d’un autre éclairement repose sur le modèle
balance-irradiance-hardly-varied-remedy = faites des essais par un soleil plus faible et par un soleil plus fort
balance-loss-not-shown = la perte est de { $loss } W/K et peut être nulle ({ $range } W/K)
balance-loss-not-shown-remedy = faites des essais sur une plage plus large de températures de l’eau, et sur plus de jours
cooking-opinion = STILL TO TRANSLATE

## What it means for cooking

cooking-no-line = STILL TO TRANSLATE
cooking-not-valid = STILL TO TRANSLATE
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, comme à l’essai
cooking-no = STILL TO TRANSLATE
cooking-no-ends = STILL TO TRANSLATE
cooking-probably-not = STILL TO TRANSLATE
cooking-probably-not-ends = STILL TO TRANSLATE
cooking-time-range = { $shortest } à { $longest }
cooking-time-open = STILL TO TRANSLATE
# As in English
cooking-boil = { $time } ({ $range })
cooking-foods-title = Aliments portés à la température de cuisson et maintenus à celle-ci en { $time } au plus
cooking-foods-all = STILL TO TRANSLATE
# As in English
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = STILL TO TRANSLATE
cooking-amount-or-more = { $amount } ou plus
cooking-cooked-at = { $temperature } pendant { $time }
cooking-amount-range = { $lowest } à { $highest }
cooking-amount-up-to = STILL TO TRANSLATE
cooking-amount-none = STILL TO TRANSLATE
cooking-amount-probably-none = STILL TO TRANSLATE
cooking-heat-ends = STILL TO TRANSLATE
cooking-heat-ends-or-boils = STILL TO TRANSLATE
cooking-ends-perhaps = STILL TO TRANSLATE
cooking-ends-above = STILL TO TRANSLATE
cooking-never-ends = STILL TO TRANSLATE
cooking-light-of-test = STILL TO TRANSLATE
cooking-light-asked = STILL TO TRANSLATE
cooking-air-mean = Température ambiante { $ambient }, la moyenne des intervalles retenus.
cooking-air-asked = Température ambiante { $ambient }, comme la campagne le demande.
cooking-assumed-load = STILL TO TRANSLATE
cooking-assumed-edges = STILL TO TRANSLATE
cooking-assumed-edges-one-day = STILL TO TRANSLATE
cooking-no-months = STILL TO TRANSLATE
cooking-assumed-water = STILL TO TRANSLATE
food-potatoes = pommes de terre, en morceaux
food-carrots = carottes, en morceaux
food-cabbage = chou, émincé
food-rice = riz avec deux fois sa masse d’eau
food-eggs = œufs, entiers
food-fish = poisson (cabillaud)

## Clear days through the year

year-note-balance = STILL TO TRANSLATE
year-note-water = STILL TO TRANSLATE
year-caption = STILL TO TRANSLATE
year-hours-of = STILL TO TRANSLATE
year-axis-heat = STILL TO TRANSLATE
year-axis-water = STILL TO TRANSLATE
year-alt = STILL TO TRANSLATE
year-alt-month = STILL TO TRANSLATE
fuel-name = combustible
fuel-heat = chaleur par jour clair
fuel-heat-text = STILL TO TRANSLATE
fuel-value = pouvoir calorifique inférieur
fuel-stove = rendement du fourneau
fuel-days = jours par an
fuel-result = Avec ces hypothèses, toutes de l’opérateur, la même chaleur demanderait, selon l’estimation, { $best } kg de combustible ({ $fuel }) par an ({ $range } kg selon la seule incertitude de l’évaluation). Il n’est économisé que dans la mesure où le feu n’est vraiment pas allumé ; rien n’est promis.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Les règlements locaux, et la pratique des professionnels habilités à travailler selon ces règlements, passent avant tout ce que contient ce rapport. Le rapport évalue la chaleur ; il ne se prononce pas sur la sécurité du cuiseur ni sur celle des aliments.
caution-governs = Tant qu’une personne de langue française n’a pas vérifié cette traduction, c’est le texte anglais qui fait foi.
caution-burns-title = Brûlures et échaudures
caution-burns-text = La marmite, son couvercle, le vitrage, la grille et la vapeur sont assez chauds pour brûler au moindre contact, bien avant que l’eau ne bouille : le métal nu brûle vers 65 °C en l’espace d’une seconde et vers 51 °C en l’espace d’une minute. Mettez des gants secs, ouvrez le couvercle en l’écartant de vous, et mettez le cuiseur à l’ombre et laissez reposer la marmite avant de la porter. Le verre chaud se fend au contact de l’eau froide, et un tube étroit peut projeter son eau bouillante.
caution-light-title = Lumière concentrée et éblouissement
caution-light-text = Ne regardez jamais dans le foyer, ni vers le soleil ou son image dans un réflecteur ou un panneau : aucune paire de lunettes de soleil ne rend cela sans danger, et des verres foncés ne suffisent pas près du foyer. Gardez la tête et les mains hors du faisceau. Détournez le réflecteur du soleil, ou mettez-le à l’ombre, avant de tendre la main vers la marmite. Attention : il peut éblouir les voisins, les conducteurs et les passants.
caution-fire-title = Incendie
caution-fire-text = Un réflecteur garde son foyer pendant que le soleil se déplace, et peut ainsi mettre le feu à de l’herbe sèche, à du tissu, à du bois ou à un mur auxquels il ne faisait pas face une heure plus tôt. Installez-le sur un sol nu, à l’écart de tout ce qui brûle, gardez de l’eau ou du sable à portée de main, et couvrez le réflecteur ou tournez-le vers le bas quand il ne sert pas, y compris à l’intérieur et pendant le stockage. Ne mettez jamais d’eau sur une matière grasse en feu : couvrez-la.
caution-unattended-title = Jamais sans surveillance
caution-unattended-text = Une personne qui connaît les dangers reste auprès du cuiseur, l’oriente et surveille la marmite. Une marmite où il n’y a plus d’eau surchauffe, se fend ou prend feu ; un bocal fermé hermétiquement ou un couvercle bloqué par serrage peut éclater.
caution-children-title = Enfants et animaux
caution-children-text = Tenez les enfants et les animaux à l’extérieur d’une ligne marquée autour du cuiseur. Ils ne voient pas le foyer, et celui-ci peut se trouver à la hauteur de leurs yeux.
caution-wind-title = Vent
caution-wind-text = Un réflecteur est une voile. Lestez-le ou attachez-le, et rangez-le avant un vent fort : quand il bascule, il renverse de l’eau bouillante et projette son foyer ailleurs.
caution-materials-title = Soleil, chaleur et matériaux
caution-materials-text = Qui fait l’essai reste des heures au soleil : chapeau, ombre, eau et pauses. N’utilisez ni peinture, ni film, ni colle, ni métal galvanisé qui chauffe près des aliments ou dégage des émanations ; chauffez une fois un cuiseur neuf sans aliments, en plein air.
caution-food-title = Sécurité des aliments
caution-food-text = Les bactéries se multiplient vite entre 5 °C et 60 °C. Les aliments ne doivent pas rester dans cette plage plus de deux heures en tout, plus d’une heure là où l’air dépasse 32 °C ; un cuiseur qui chauffe lentement, ou un nuage, peut leur faire dépasser cette durée, et réchauffer n’efface pas ce qui s’est formé entre-temps. Mesurez à l’intérieur de l’aliment : au moins 74 °C partout. Gardez les aliments chauds à 60 °C ou plus. En cas de doute, jetez-les.
caution-water-title = Eau de boisson
caution-water-text = STILL TO TRANSLATE
caution-sources = STILL TO TRANSLATE

## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log } : les lignes n’étaient pas dans l’ordre du temps et ont été triées
notice-repeated-times = { $log } : { $rows ->
        [one] { $rows } ligne à la même heure qu’une ligne précédente laissée de côté
       *[other] { $rows } lignes à la même heure qu’une ligne précédente laissées de côté
    } ; la première compte
notice-rows-left-out = { $log } : { $rows ->
        [one] { $rows } ligne laissée de côté (ligne { $lines } : { $reason })
       *[other] { $rows } lignes laissées de côté (lignes { $lines } : { $reason })
    }
# { $columns } is a list of notice-unit-assumed.
notice-units-assumed = { $count ->
        [one] aucune unité n’est indiquée pour une colonne, lue comme { $columns } ; indiquez-la dans l’en-tête, ou sous [units]
       *[other] aucune unité n’est indiquée pour des colonnes, lues comme { $columns } ; indiquez-la dans l’en-tête, ou sous [units]
    }
notice-unit-assumed = « { $header } » en { $unit }
notice-beyond-calibration = { $log } : { $readings ->
        [one] { $readings } relevé
       *[other] { $readings } relevés
    } de la colonne « { $column } » au-delà des points de son étalonnage, d’après le segment de droite le plus proche
notice-quantity-in-both = { $quantity } : dans { $log } et dans { $weather } ; ce qui est relevé à côté du cuiseur compte
notice-weather-in-part = { $weather } ne couvre qu’une partie de { $log } ; vérifiez les horloges des deux (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log } : partagé en { $runs ->
        [one] { $runs } essai
       *[other] { $runs } essais
    } selon les dates et les trous, chacun du début à la fin de l’essai ; laissés de côté : { $parts } et { $readings }
notice-log-split-rising = { $log } : partagé en { $runs ->
        [one] { $runs } essai
       *[other] { $runs } essais
    } selon les dates et les trous, chacun de l’eau la plus froide à la plus chaude, là où elle monte de { $rise } K ou plus ; laissés de côté : { $parts } et { $readings }
notice-log-parts = { $count ->
        [one] { $count } partie
       *[other] { $count } parties
    }
notice-log-readings = { $count ->
        [one] { $count } relevé
       *[other] { $count } relevés
    }
notice-fault-values = { $log } : { $cells ->
        [one] { $cells } valeur de défaut de la colonne « { $column } » comptée comme manquante
       *[other] { $cells } valeurs de défaut de la colonne « { $column } » comptées comme manquantes
    } ; vérifiez le câblage du capteur
notice-unbelievable = { $readings ->
        [one] { $log } : { $readings } relevé de la colonne « { $column } » ne peut pas être vrai ({ $values } { $unit }) et est compté comme manquant ; vérifiez le capteur
       *[other] { $log } : { $readings } relevés de la colonne « { $column } » ne peuvent pas être vrais ({ $values } { $unit }) et sont comptés comme manquants ; vérifiez le capteur
    }
notice-sensors-apart = { $log } : les capteurs ({ $quantity }) s’écartent de plus de { $apart } K l’un de l’autre à { $readings ->
        [one] { $readings } instant
       *[other] { $readings } instants
    } ; leur moyenne est utilisée : vérifiez qu’aucun n’est en panne
notice-sensors-incomplete = { $log } : à { $readings ->
        [one] { $readings } instant
       *[other] { $readings } instants
    }, un des capteurs ({ $quantity }) n’a pas de relevé ; la moyenne des autres y fait un saut s’ils diffèrent
notice-long-run = { $log } : les relevés s’étendent sur { $days } jours, un essai est un seul chauffage en un jour ; vérifiez les dates, fixez le début et la fin, ou split = "daily"
notice-above-boiling = { $log } : l’eau atteint { $highest }, au-dessus de son point d’ébullition de { $boiling } ici ; vérifiez le capteur, l’altitude ou la pression
notice-odd-noon = { $log } : le midi solaire tombe à { $noon } à l’horloge ; vérifiez la longitude (est positif) et le fuseau horaire
notice-column-not-found = { $log } : aucune colonne n’est comprise comme { $quantity }, ce qui compte comme non mesuré ; colonnes non lues : { $ignored } ; si l’une d’elles contient cette grandeur, nommez-la sous [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = lu hors du dossier de la campagne, comme l’a permis la personne qui a fait ceci (--allow-outside) : { $files }
notice-trimmed = { $log } : { $readings ->
        [one] { $readings } relevé avant le début de l’essai ou après sa fin laissé de côté
       *[other] { $readings } relevés avant le début de l’essai ou après sa fin laissés de côté
    }
notice-no-intervals = { $log } : il n’y a pas deux relevés de l’eau séparés de { $shortest } à { $longest } minutes, il n’y a donc pas d’intervalle ; enregistrez à un pas dont la somme fait { $minutes } minutes
notice-idle-exclusion = { $log } : la période exclue de { $from } à { $to } ne touche aucun intervalle ; vérifiez ses heures
notice-stall = { $log } : l’eau gagne moins de la moitié de ce que dit la droite { $spans }, comme sous un nuage, alors que le ciel est dit sans nuages ; regardez vos notes, et l’orientation
# A span of clock times: from 11:20 to 11:40.
notice-span = de { $from } à { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = entre { $cold } et { $hot }
danger-measured = sécurité des aliments : dans { $run }, l’eau est restée { $zone } pendant { $time } ; les aliments ne doivent pas rester { $zone } plus de { $longest } en tout (USDA FSIS, OMS), là où les bactéries se multiplient : cuisez de plus petites quantités, commencez avec de l’eau chaude, et gardez viande, poisson, œufs, lait et riz cuit pour un soleil plus fort ou un autre fourneau
danger-predicted = sécurité des aliments : { $predicted } ; les aliments ne doivent pas rester { $zone } plus de { $longest } en tout (USDA FSIS, OMS), là où les bactéries se multiplient : cuisez de plus petites quantités, commencez avec de l’eau chaude, et gardez viande, poisson, œufs, lait et riz cuit pour un soleil plus fort ou un autre fourneau
danger-both = sécurité des aliments : dans { $run }, l’eau est restée { $zone } pendant { $time }, et { $predicted } ; les aliments ne doivent pas rester { $zone } plus de { $longest } en tout (USDA FSIS, OMS), là où les bactéries se multiplient : cuisez de plus petites quantités, commencez avec de l’eau chaude, et gardez viande, poisson, œufs, lait et riz cuit pour un soleil plus fort ou un autre fourneau
danger-expected-never = on ne s’attend pas à ce que la charge essayée arrive à { $hot }
danger-expected = on s’attend à ce que la charge essayée mette environ { $time } pour arriver à { $hot } ({ $shortest } à { $longest })
danger-expected-open = on s’attend à ce que la charge essayée mette environ { $time } pour arriver à { $hot } ({ $shortest } ou plus, ou qu’elle n’y arrive pas)
# What the line says, within the sentences above.
notice-above-film = à température ambiante, la droite absorbe { $share } % du rayonnement solaire intercepté, plus que ce que renvoie un film réfléchissant (86 % ; pratique courante, sans source publiée) ; vérifiez la surface d’interception, la masse d’eau et l’éclairement
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = incertitude non indiquée, on suppose donc l’instrument le plus prudent : { $taken } ; indiquez la classe ou l’incertitude sous [instruments]
notice-instrument-taken = { $quantity } par { $class }
notice-date-differs = { $log } : la date donnée pour l’essai est { $stated }, ses relevés commencent le { $found } ; les relevés comptent

## How the logs were read

quantity-time = temps
# As in English
quantity-date = date
quantity-clock = heure d’horloge
quantity-elapsed = temps écoulé
quantity-water = température de l’eau
quantity-vessel = température du récipient
quantity-ambient = température ambiante
quantity-irradiance = éclairement
quantity-wind = vitesse du vent
skip-before-header = avant l’en-tête
skip-units-row = unités sous l’en-tête
skip-between = entre l’en-tête et les relevés
skip-remark = STILL TO TRANSLATE
skip-blank = vide
skip-header-again = en-tête répété
skip-before-header-again = avant un en-tête répété
skip-footer = après le dernier relevé
skip-cut-off = coupée à la fin du fichier
skipped-more = { $lines } et { $more } de plus
skipped-lines = STILL TO TRANSLATE
# Labels and texts of a list of facts about a log.
log-form = forme
log-form-text = { $written_in } ; en-tête à la ligne { $line } ; marque décimale : { $mark }
log-time-text = temps : { $format }, comme dans « { $example } » ; fuseau : { $zone }
log-clock = horloge
log-clock-text = { $seconds } s ajoutées à toutes les heures
log-not-read = non lu
log-readings = { $readings ->
        [one] { $readings } relevé de { $from } à { $to }
       *[other] { $readings } relevés de { $from } à { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } relevé de { $from } à { $to }, le plus souvent un toutes les { $step } s
       *[other] { $readings } relevés de { $from } à { $to }, le plus souvent un toutes les { $step } s
    }
# How a column was understood: water temperature (synonym), °C (header).
# As in English
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }) ; { $corrections }
found-campaign-file = fichier de campagne
found-header = en-tête
found-synonym = synonyme
found-elimination = rien d’autre dans un journal météo
unit-header = en-tête
unit-units-row = ligne d’unités
unit-campaign-file = fichier de campagne
unit-cells = cellules
unit-assumed = non indiquée, supposée
corrected-vessel = récipient { $vessel }, { $load }
corrected-sensitivity = sensibilité { $sensitivity } { $unit } par W/m²
corrected-line-plus = étalonné : relevé × { $gain } + { $offset } { $unit }
corrected-line-minus = étalonné : relevé × { $gain } − { $offset } { $unit }
corrected-points = étalonné par points, { $unit } : { $points }
# How the file is written: what it is, then what separates its cells.
written-sheet = tableur, feuille « { $sheet } »
written-text = { $encoding }, cellules séparées par { $delimiter }
written-gzip = gzip, { $encoding }, cellules séparées par { $delimiter }
encoding-marked = { $name } avec marque d’ordre des octets
encoding-stated = { $name } (fichier de campagne)
delimiter-comma = virgule
delimiter-semicolon = point-virgule
delimiter-tab = tabulation
delimiter-pipe = barre verticale
delimiter-space = suites d’espaces
delimiter-wide-space = suites de deux espaces ou plus
mark-comma = virgule
# As in English
mark-point = point
mark-thousands = { $decimal }, milliers « { $mark } » (fichier de campagne)
# How times are written: date and time, newest first.
time-newest-first = { $form }, la plus récente d’abord
time-date-and-time = date et heure
# { $order } is year-month-day or the like, { $from } one of order-from-….
# As in English
time-ordered = { $order } ({ $from })
time-clock-only = heure d’horloge, la première le { $date }
time-stopwatch = temps écoulé depuis le début de l’essai
time-since-1970 = { $unit } depuis 1970
time-serial = jours de tableur depuis 1899-12-30
time-elapsed = { $unit } depuis le début de l’essai (temps écoulé)
zone-epoch = UTC (depuis 1970)
zone-start = celui du début de l’essai
zone-offsets = décalage à chaque ligne
# { $zone } is a name such as Europe/Madrid, { $from } where it stands.
# As in English
zone-named = { $zone } ({ $from })
# As in English
zone-local = local
from-header = en-tête
from-units-row = ligne d’unités
from-line-before = ligne avant l’en-tête
from-campaign-file = fichier de campagne
# As in English
from-site = site
order-only-days = le seul ordre où chaque ligne est un jour
order-first-row = la première ligne
order-same-day = le même jour dans n’importe quel ordre
order-only-following = le seul ordre où les jours se suivent
order-run-date = la date de l’essai
order-year-month-day = année-mois-jour
order-day-month-year = jour-mois-année
order-month-day-year = mois-jour-année

# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = écart de température Td, eau moins ambiante, K
# Upright, up to 45 letters.
figure-power = puissance de cuisson normalisée Ps, W
figure-power-estimated = Ps, W, avec éclairement estimé
figure-power-short = STILL TO TRANSLATE
figure-power-short-estimated = STILL TO TRANSLATE
# In an empty figure.
figure-no-interval = aucun intervalle complet, il n’y a donc rien à tracer
figure-nothing-to-plot = éclairement non mesuré, il n’y a donc rien à tracer
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W à 50 K

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = écart de température Td, K
figure-start = heure locale au début
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = attendu, en écarts-types
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps moins droite, W
figure-band = droite et sa bande, W
# A day in a key.
# As in English
figure-day = { $day } { $month }

## Figures: a run over the day

# Beside a curve.
figure-water = eau
figure-ambient = ambiante
figure-boils = STILL TO TRANSLATE
figure-below-boiling = STILL TO TRANSLATE
figure-above-ambient = STILL TO TRANSLATE
figure-estimated = STILL TO TRANSLATE

# The comparison of several campaigns, in the order of its pages.
#
# Campaigns are called by letters, A, B, C …, with the cooker's name in brackets behind it
# where they are few: { $first } and { $second } are "A (Box one)" or "A". The difference is
# that of the second from the first.

## Comparison: every page

comparison-kind = Cuiseurs solaires comparés
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = STILL TO TRANSLATE
# As in English
comparison-sites = { $count } sites
# In place of a long list of those who tested.
comparison-authors = STILL TO TRANSLATE
comparison-statement = Les résultats ne valent que pour les cuiseurs tels qu’essayés. Ne reproduire qu’en entier.
# At the head of every page.
comparison-mark-mixed = Procédures ou limites mélangées
comparison-mark-not-valid = STILL TO TRANSLATE
comparison-mark-indicative = Indicatif en partie
comparison-mark-invented = Données inventées, pour démonstration
comparison-end = Fin du rapport { $number }

## The web page that leads to the reports of several campaigns

# { $count }: how many reports it leads to.
index-title = STILL TO TRANSLATE
index-subtitle = STILL TO TRANSLATE
# { $name }: a campaign.
index-invented = STILL TO TRANSLATE
index-some-invented = STILL TO TRANSLATE
index-statement = STILL TO TRANSLATE
index-no-rating = STILL TO TRANSLATE
# "compare" is a command.
index-order = STILL TO TRANSLATE
page-index-reports = STILL TO TRANSLATE
index-web-page = STILL TO TRANSLATE
index-pdf = STILL TO TRANSLATE
index-results = STILL TO TRANSLATE
index-intervals = STILL TO TRANSLATE
# { $names }: campaigns, with ";" between them.
index-failed = STILL TO TRANSLATE
index-caution = STILL TO TRANSLATE

## Comparison: what campaigns are called

# A campaign's title within a sentence.
calls-name = STILL TO TRANSLATE
# Some campaigns by the numbers that they have in the comparison: "2", or "1–4, 7".
calls-numbers = STILL TO TRANSLATE

## Comparison: its title
#
# { $name }, { $first }, { $second }: titles of campaigns. { $power }: verdict-power, or
# verdict-power-indicative. "Gives" is of standardised cooking power at 50 K.

verdict-power = STILL TO TRANSLATE
verdict-power-indicative = STILL TO TRANSLATE
verdict-title-only = STILL TO TRANSLATE
verdict-title-two = STILL TO TRANSLATE
verdict-title-two-alike = STILL TO TRANSLATE
verdict-title-two-untold = STILL TO TRANSLATE
verdict-title-most = STILL TO TRANSLATE
# Some cannot be held against it; or none can.
verdict-title-most-told = STILL TO TRANSLATE
verdict-title-alone = STILL TO TRANSLATE
verdict-title-leads-one = STILL TO TRANSLATE
# { $others }: at least two.
verdict-title-leads = STILL TO TRANSLATE
# { $second } gives more by the heat balances, which decide where irradiance differed.
verdict-title-beaten-by-one = STILL TO TRANSLATE
verdict-title-beaten = STILL TO TRANSLATE
# Counts of those held against the baseline { $name }.
verdict-title-baseline = STILL TO TRANSLATE
# Beside a large number, which is { $minuend } less { $subtrahend }.
verdict-lead = STILL TO TRANSLATE
verdict-lead-common = STILL TO TRANSLATE
# { $pairs }: at least two.
verdict-in-all = STILL TO TRANSLATE
verdict-untold-pairs = STILL TO TRANSLATE

## Comparison: the ranking
#
# Above its plot; then the headers of its columns, which have little room.

ranking-axis = STILL TO TRANSLATE
page-ranking-campaign = STILL TO TRANSLATE
# Over letters of groups, of which two campaigns that cannot be told apart have one in common.
page-ranking-groups = STILL TO TRANSLATE
# On a terminal: a difference with its interval and what it is of.
terminal-lead = STILL TO TRANSLATE
# A header, over ranks.
terminal-rank = STILL TO TRANSLATE
# Over cells such as "0.94 · 45 · 4", in two lines.
ranking-rests-on = STILL TO TRANSLATE
# For each square metre of intercept area, as the campaign files state it.
ranking-per-area = STILL TO TRANSLATE
# { $currency }: as the tester wrote it.
ranking-per-currency = STILL TO TRANSLATE
ranking-per-cost = STILL TO TRANSLATE
# Headers of a column of differences.
ranking-from-first = STILL TO TRANSLATE
ranking-from-baseline = STILL TO TRANSLATE
# Below the ranking.
ranking-note-brackets = STILL TO TRANSLATE
ranking-note-all-apart = STILL TO TRANSLATE
# Below the ranking, a list says of each rank from which others it cannot be told apart.
ranking-note-alike = STILL TO TRANSLATE
ranking-note-not-held = STILL TO TRANSLATE
ranking-note-differences = STILL TO TRANSLATE
ranking-note-common = STILL TO TRANSLATE
ranking-note-data = STILL TO TRANSLATE
page-ranking-continued = STILL TO TRANSLATE
# Read out where a campaign has no bar.
page-ranking-alone = STILL TO TRANSLATE
# Read out to those who do not see the plot.
ranking-alt = STILL TO TRANSLATE
# What the marks of the plot mean.
ranking-key-filled = STILL TO TRANSLATE
ranking-key-open = STILL TO TRANSLATE
ranking-key-struck = STILL TO TRANSLATE
# { $names }: campaigns, with ";" between them.
ranking-left-out = STILL TO TRANSLATE
# { $level }: one of those that begin with ratings-; { $reasons }: some of the next, in two or
# three words each.
status-for = STILL TO TRANSLATE
status-one-day = STILL TO TRANSLATE
status-too-few-intervals = STILL TO TRANSLATE
status-too-few-days = STILL TO TRANSLATE
status-r-squared-low = STILL TO TRANSLATE
status-line-not-falling = STILL TO TRANSLATE
status-no-useful-heat = STILL TO TRANSLATE
status-extrapolated = STILL TO TRANSLATE
status-load-off = STILL TO TRANSLATE
status-wind-not-measured = STILL TO TRANSLATE
status-wind-estimated = STILL TO TRANSLATE
status-flat = STILL TO TRANSLATE
status-irradiance-missing = STILL TO TRANSLATE
status-plane-not-stated = STILL TO TRANSLATE
status-impossible-gain = STILL TO TRANSLATE
status-own-limits-looser = STILL TO TRANSLATE
status-own-limits-tighter = STILL TO TRANSLATE
status-excluded = STILL TO TRANSLATE

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } à { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = STILL TO TRANSLATE
# The sentence that follows is of that.
verdict-common = STILL TO TRANSLATE
verdict-untold = STILL TO TRANSLATE
# The sentence that follows is of that.
verdict-shown-more = { $second } donne { $difference } W de plus que { $first } ({ $interval } W) : une différence réelle.
verdict-shown-less = { $second } donne { $difference } W de moins que { $first } ({ $interval } W) : une différence réelle.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } donne { $difference } W de plus que { $first } ({ $interval } W), { $share } % : une différence réelle.
verdict-shown-less-share = { $second } donne { $difference } W de moins que { $first } ({ $interval } W), { $share } % : une différence réelle.
verdict-one-day-more = { $second } a donné { $difference } W de plus que { $first } ({ $interval } W) lors des essais, mais pas sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : essayez de nouveau les deux d’autres jours.
verdict-one-day-less = { $second } a donné { $difference } W de moins que { $first } ({ $interval } W) lors des essais, mais pas sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : essayez de nouveau les deux d’autres jours.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = STILL TO TRANSLATE
verdict-by-chance-less = STILL TO TRANSLATE
# One of the sentences that begin with needed- may follow.
verdict-not-shown-more = Aucune différence entre { $second } et { $first } n’a pu être démontrée : { $difference } W de plus, et toute valeur de { $interval } W est compatible avec les données.
verdict-not-shown-less = Aucune différence entre { $second } et { $first } n’a pu être démontrée : { $difference } W de moins, et toute valeur de { $interval } W est compatible avec les données.
# "One" is a difference, in the next three.
needed-other-days = Essayez de nouveau les deux d’autres jours.
# Before one of those that begin with needed-; "one" there is a difference of these two.
needed-of = STILL TO TRANSLATE
needed-none = Une différence de { $sought } W aurait très probablement été vue.
needed-days = Avec { $days ->
        [one] { $days } jour de plus
       *[other] { $days } jours de plus
    } comme ceux des essais, pour chacun, on en verrait très probablement une de { $sought } W.
needed-no-number = Des jours de plus, à eux seuls, n’en montreraient guère une de { $sought } W : les jours, ou les instruments dont l’id n’est pas le même, diffèrent trop.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = Sans bilan thermique des deux, on ne peut pas dire d’où vient une différence.
# The next six are followed by cause-numbers.
cause-no-difference = Comme aucune différence n’est démontrée, aucune cause n’est nommée.
cause-not-shown = D’où vient la différence n’est pas démontré.
cause-more-gain = { $second } capte plus de soleil que { $first }, comme après un changement d’optique.
cause-less-gain = { $second } capte moins de soleil que { $first }, comme après un changement d’optique.
cause-more-loss = { $second } perd plus de chaleur par kelvin que { $first }, comme avec une moins bonne isolation, plus de vent ou sans couvercle.
cause-less-loss = { $second } perd moins de chaleur par kelvin que { $first }, comme avec une meilleure isolation, moins de vent ou un couvercle.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } moins { $first } d’après les bilans thermiques : gain { $gain } m² ({ $gain_interval } m²), perte { $loss } W/K ({ $loss_interval } W/K).
# In a cell of the matrix, where the difference is real: what it comes from.
matrix-gain = STILL TO TRANSLATE
matrix-loss = STILL TO TRANSLATE
matrix-both = STILL TO TRANSLATE

## Comparison: the matrix of differences

matrix-title = STILL TO TRANSLATE
# Read out in place of a cell. { $verdict }: difference-real or difference-not-shown.
matrix-alt = STILL TO TRANSLATE
matrix-untold = STILL TO TRANSLATE
matrix-note = STILL TO TRANSLATE
# A star stands before it.
matrix-note-common = STILL TO TRANSLATE
matrix-note-untold = STILL TO TRANSLATE
matrix-note-cause = STILL TO TRANSLATE

## Comparison: lines and heating times

section-lines = STILL TO TRANSLATE
lines-caption = STILL TO TRANSLATE
# Read out to those who do not see the panel.
lines-alt = STILL TO TRANSLATE
# { $shown }: those with most power.
comparison-first-only = STILL TO TRANSLATE
section-heating = STILL TO TRANSLATE
heating-title = STILL TO TRANSLATE
heating-note = STILL TO TRANSLATE

## Comparison: what a reader must know first

# "The first" is the campaign named first, A.
departure-procedure = procédure { $here } là où la première a { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = STILL TO TRANSLATE
# The same on paper. { $limit }: one of those that begin with limit-. { $here }, { $there }: with
# their units, or departure-none.
departure-limit-said = STILL TO TRANSLATE
departure-least-said = STILL TO TRANSLATE
departure-most-said = STILL TO TRANSLATE
departure-none-said = STILL TO TRANSLATE
departure-procedure-said = STILL TO TRANSLATE
departure-guard-said = STILL TO TRANSLATE
departure-no-guard-said = STILL TO TRANSLATE
departure-none = aucune
# What a reader must know first: a label, and what is said. { $campaigns }: one or two titles, or
# calls-numbers.
page-caveats = STILL TO TRANSLATE
caveat-not-valid = STILL TO TRANSLATE
caveat-not-valid-text = STILL TO TRANSLATE
caveat-no-rating = STILL TO TRANSLATE
caveat-no-rating-text = STILL TO TRANSLATE
caveat-indicative = STILL TO TRANSLATE
caveat-indicative-text = STILL TO TRANSLATE
caveat-few-days = STILL TO TRANSLATE
caveat-few-days-text = STILL TO TRANSLATE
caveat-limits = STILL TO TRANSLATE
# { $first }: calls-name of the campaign that was named first. caveat-limits-one of the others
# follow.
caveat-limits-text = STILL TO TRANSLATE
# { $departures }: some of departure-…-said, with ";" between them.
caveat-limits-one = STILL TO TRANSLATE
caveat-irradiance = STILL TO TRANSLATE
# { $ways }: some of caveat-irradiance-one, or one caveat-irradiance-all, with ";" between them.
caveat-irradiance-text = STILL TO TRANSLATE
caveat-irradiance-same = STILL TO TRANSLATE
# { $way }: one of the next four.
caveat-irradiance-one = STILL TO TRANSLATE
caveat-irradiance-all = STILL TO TRANSLATE
caveat-way-normal = STILL TO TRANSLATE
caveat-way-flat = STILL TO TRANSLATE
caveat-way-not-stated = STILL TO TRANSLATE
caveat-way-estimated = STILL TO TRANSLATE
# { $name }: a place or a person.
caveat-group = STILL TO TRANSLATE
caveat-sites = STILL TO TRANSLATE
caveat-sites-text = STILL TO TRANSLATE
caveat-testers = STILL TO TRANSLATE
caveat-testers-text = STILL TO TRANSLATE
caveat-sensors = STILL TO TRANSLATE
caveat-sensors-none = STILL TO TRANSLATE
# { $groups }: some of calls-numbers, with ";" between them.
caveat-sensors-text = STILL TO TRANSLATE

## Comparison: the figure


## Comparison: tables of page one

# As in English
ratings-conforms = conforme
ratings-conforms-with-notes = conforme avec remarques
ratings-indicative = indicatif seulement
ratings-not-valid = non valide
ratings-no-rating = pas d’évaluation
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
# As in English
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
# As in English
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – jamais)
heating-never = n’y arrive pas

## Comparison: caution on page one

caution-compared = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et ces évaluations ne disent rien de la sécurité des aliments. Lisez les mises en garde de la section { $section } avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.

## Comparison: differences

section-differences = STILL TO TRANSLATE
# Labels, with little room.
difference-verdict = STILL TO TRANSLATE
difference-p = STILL TO TRANSLATE
difference-method = STILL TO TRANSLATE
# A difference with its 95 % interval, in watts.
difference-with-interval = STILL TO TRANSLATE
# Whether the difference is real.
difference-apart = chacun par ses propres jours
difference-paired = appariés par jour, { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }
difference-real = réelle
difference-not-shown = non démontrée
# In place of real and not shown, where irradiance differed.
difference-scaled = soleils différents
# As in English
difference-of-ratings = Ps(50)
difference-of-common = puissance à 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = STILL TO TRANSLATE
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
# As in English
page-comparison-source = source
page-comparison-shared = dans la différence
page-comparison-apart = si rien n’était commun
pair-budget-scatter = dispersion et jours
pair-budget-combined = composée
pair-budget-expanded = élargie, 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = Les campagnes
# Of each campaign one after the other, each a line of its own.
campaign-cooker = STILL TO TRANSLATE
campaign-cost = STILL TO TRANSLATE
# As in English
comparison-test-text = { $dates }, { $runs ->
        [one] { $runs } essai
       *[other] { $runs } essais
    } ; { $site }, { $elevation } m ; opérateur : { $tester }
comparison-not-stated = non indiqué
# { $slope }: without its sign.
campaign-line = STILL TO TRANSLATE
# The heat balance, each figure with its ±.
campaign-balance = STILL TO TRANSLATE
# { $parts }: the next three, as far as they were measured.
campaign-around = STILL TO TRANSLATE
campaign-sun = STILL TO TRANSLATE
campaign-air = STILL TO TRANSLATE
campaign-wind = STILL TO TRANSLATE
campaign-report = STILL TO TRANSLATE
# The heat balance, each figure with its ±.
comparison-instrument = { $quantity } : { $instrument }, { $uncertainty }

## Comparison: method and provenance

section-method = Méthode et provenance
page-comparison-made-with = Réalisé avec
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 pour chaque évaluation ; JCGM 100:2008 pour les différences
comparison-note-ratings = Chaque évaluation est celle de la pratique : Ps(50), lu sur la droite à Td = 50 K. Elle met la puissance à l’échelle de 700 W/m², pertes comprises. Quand l’éclairement moyen des deux essais est semblable, la différence dite réelle ou non démontrée est celle des évaluations.
comparison-note-suns = Quand l’éclairement moyen diffère de plus de { $percent } %, c’est la différence des puissances à 700 W/m² et 50 K d’après les bilans thermiques. Un bilan thermique est P = g·G − u·Td, ajusté à tous les intervalles dont les relevés sont fiables. Il suppose que le gain g et la perte u sont les mêmes sous les deux soleils ; le vent n’est pas corrigé.
comparison-note-uncertainty = L’incertitude d’une différence comprend la dispersion et les jours des deux campagnes, chacune en laissant de côté un jour à la fois, et ce que leurs instruments n’ont pas en commun. Les instruments sont les mêmes quand les fichiers de campagne donnent un même id ; ceux sans id comptent comme différents, ce qui agrandit l’incertitude. L’erreur d’une estimation de l’éclairement n’est qu’une seule erreur quand les deux ont été estimés de la même façon, sur un même site les mêmes jours. La chaleur massique est commune à tous.
comparison-note-paired = STILL TO TRANSLATE
comparison-note-p = p est la probabilité d’une différence aussi grande s’il n’y en a aucune (t de Student, Cochran & Cox) ; le p corrigé tient compte de { $pairs ->
        [one] { $pairs } paire
       *[other] { $pairs } paires
    } par la méthode de Holm. Une différence est dite réelle quand le p corrigé est inférieur à 0,05 et que les deux ont été essayés sur plusieurs jours.
comparison-note-groups = STILL TO TRANSLATE
comparison-note-causes = D’où vient une différence, ce sont les différences de g et de u qui le disent, chacune avec dispersion, jours et instruments. Une cause est nommée quand une différence est réelle et que le p de g ou de u est inférieur à 0,05 ; ces p ne sont pas corrigés du nombre de paires.
comparison-note-needed = Nombre de jours de plus qu’il faut : pour quatre chances sur cinq de démontrer à 95 % une différence de cette taille, si les jours et la dispersion restent tels qu’ils ont été vus.
comparison-note-reports = Chaque évaluation a son propre rapport, avec ses relevés, ses conditions et son bilan.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
# As in English
plan-day = { $weekday } { $date }
# On the terminal; { $day }: plan-day, { $title }: the campaign's.
plan-title = STILL TO TRANSLATE
plan-title-none = STILL TO TRANSLATE
# Labels of lines on the terminal, and headers of its table of the sun: there is little room.
plan-run = STILL TO TRANSLATE
plan-lacks = STILL TO TRANSLATE
plan-place = STILL TO TRANSLATE
plan-place-text = STILL TO TRANSLATE
plan-elevation = STILL TO TRANSLATE
plan-azimuth = STILL TO TRANSLATE
plan-normal = STILL TO TRANSLATE
plan-horizontal = STILL TO TRANSLATE
plan-range = STILL TO TRANSLATE
plan-power = STILL TO TRANSLATE
plan-not-rated = STILL TO TRANSLATE
weekday-1 = lundi
weekday-2 = mardi
weekday-3 = mercredi
weekday-4 = jeudi
weekday-5 = vendredi
weekday-6 = samedi
weekday-7 = dimanche
# { $zone }: the name of a time zone, such as Europe/Madrid.
sheet-subtitle = { $day } · { $site } · horloge de { $zone }
sheet-mark = Données inventées, pour démonstration

## Field sheet: sun, water, aiming
#
# What stands at the left has room for 13 letters, else it goes onto two lines.

plan-sun = soleil
plan-sun-course = se lève à { $rise }, midi solaire à { $noon }, se couche à { $set }
plan-sun-no-rise = ne se lève pas, midi solaire à { $noon }, se couche à { $set }
plan-sun-no-set = se lève à { $rise }, midi solaire à { $noon }, ne se couche pas
plan-sun-neither = ne se lève pas, midi solaire à { $noon }, ne se couche pas
plan-sun-always = ne se couche pas ; midi solaire à { $noon }
plan-sun-never = ne se lève pas
# The hours about noon in which the practice lets one test.
plan-window = fenêtre solaire
plan-window-text = { $clocks } à l’horloge ({ $from } à { $to } en heure solaire)
# Two times of day.
plan-clocks = { $from } à { $to }
plan-clear-sky = ciel clair
# plan-too-much may follow, after a semicolon.
plan-enough-all-through = { $least } W/m² ou plus dans le plan normal au rayonnement direct de { $clocks }, donc pendant toute la fenêtre solaire
plan-enough-in-window = { $least } W/m² ou plus dans le plan normal au rayonnement direct de { $clocks }, dans la fenêtre solaire de { $usable }
plan-too-much = au-delà de { $most } W/m², les intervalles sont aussi écartés, et un ciel très clair donne ici jusqu’à { $highest }
plan-enough-outside = { $least } W/m² seulement de { $clocks }, hors de la fenêtre solaire : aucun intervalle de ce jour ne peut être retenu
plan-never-enough = n’atteint jamais { $least } W/m² (au plus { $highest }) : aucun intervalle de ce jour ne peut être retenu
plan-water = eau
# { $load }, { $each }, { $vessel }: masses with their unit. plan-load-stated may follow, after
# a semicolon.
plan-load-one = { $load }, { $each } pour chacun des { $area } m², dans un récipient
plan-load-several = { $load }, { $each } pour chacun des { $area } m², { $vessel } dans chacun des { $vessels } récipients
plan-load-stated = le fichier de campagne indique { $stated }
# From and up to which temperature of the water its readings count.
plan-start = compte dès
plan-start-above = { $difference } au-dessus de l’air, par exemple { $start } dans un air à { $air }
plan-stop = jusqu’à
plan-stop-text = { $stop } ; l’eau bout ici à { $boiling }
# In the unit of the tester's thermometer, with °C or K in brackets.
# As in English
plan-temperature = { $temperature } { $unit } ({ $celsius } °C)
# As in English
plan-difference = { $difference } { $unit } ({ $kelvin } K)
# A run of the dry vessel, or of a load that cools: when it begins, what is read, when it ends.
plan-begin = début
plan-read = lectures
plan-end = fin
plan-high-sun = soleil haut
# { $clocks }: two times of day. { $from }, { $to }: the same by the sun.
plan-high-sun-text = { $clocks } à l’horloge ({ $from } à { $to } en heure solaire), quand le soleil est haut et change le moins ; pratique courante, sans source publiée
plan-high-sun-most = jusqu’à { $highest } W/m² dans le plan normal au rayonnement direct
plan-high-sun-weak = au plus { $highest } W/m² dans le plan normal au rayonnement direct : un palier n’est cherché qu’au-dessus de { $least } W/m², choisissez donc un autre jour pour cela
plan-high-sun-none = au plus { $highest } W/m² dans le plan normal au rayonnement direct : aucune heure de ce jour ne convient
plan-dry-begin = avec le récipient vide et sec, aussi froid que l’air, couvercle mis, le cuiseur orienté
plan-dry-read = le récipient toutes les 5 à 20 min, l’air au moins une fois sur deux, jusqu’à ce que le récipient n’ait plus changé pendant une demi-heure ; pendant une heure avec un cadran à pas de 10 °F ou de 5 °C
plan-dry-read-sun = le récipient et l’éclairement toutes les 5 à 20 min, l’air au moins une fois sur deux, jusqu’à ce que le récipient n’ait plus changé pendant une demi-heure ; pendant une heure avec un cadran à pas de 10 °F ou de 5 °C
plan-cooling-load = autant que dans les essais de chauffage, { $load }
plan-cooling-load-unstated = autant que dans les essais de chauffage ; pesez-la
plan-cooling-begin = avec l’eau près de bouillir (elle bout ici à { $boiling }), couvercle mis, le cuiseur à l’ombre ou détourné du soleil
plan-cooling-read = l’eau toutes les { $minutes } min, l’air au moins une fois sur deux ; l’éclairement n’est pas nécessaire
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = quand l’eau est à { $difference } au-dessus de l’air, par exemple { $end } dans un air à { $air }
# To turn the cooker to the sun.
plan-aim = orienter
plan-aim-unknown = STILL TO TRANSLATE
plan-aim-no-time = aucune heure de ce jour ne peut servir
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = à { $clocks } et ensuite plus du tout : { $angle }° suffisent pour toute la fenêtre
plan-aim-drive = en continu, par un entraînement motorisé : le soleil se déplace de { $angle }° en moins de { $time }
plan-aim-at = à { $clocks } ; le soleil se déplace de { $angle }°, le demi-angle d’acceptance, pendant ce temps ({ $minutes } min)
plan-aim-every = toutes les { $minutes } min à partir de { $first } ; le soleil se déplace de { $angle }°, le demi-angle d’acceptance, pendant ce temps

## Field sheet: what is missing

# Two of these follow each other. { $missing }: "9 more intervals and 1 more day".
plan-missing = Il manque encore : { $missing }.
plan-missing-nothing = Les intervalles et les jours suffisent déjà.
plan-gives-none = Ce jour ne peut en donner aucun.
plan-gives = Ce jour peut donner { $most ->
        [one] { $most } intervalle de { $minutes } min
       *[other] { $most } intervalles de { $minutes } min
    } au plus.
plan-gives-by-heating = Ce jour peut donner { $most ->
        [one] { $most } intervalle de { $minutes } min
       *[other] { $most } intervalles de { $minutes } min
    } au plus ; un chauffage de cette charge environ { $heating }, puis recommencez avec de l’eau fraîche.

## Field sheet: before the first reading

check-shade = pas d’ombre sur le cuiseur jusqu’à la fin
check-wind = vent faible : la fumée dérive, les feuilles ne bougent pas
check-weighed = eau pesée, non versée à la tasse
check-sensor = capteur dans l’eau, à 10 mm au-dessus du fond, sans toucher la paroi
check-lid = couvercle mis, et il reste en place
check-air = thermomètre de l’air à l’ombre, hors de la lumière du cuiseur
check-irradiance = capteur d’éclairement propre et tourné vers le soleil
check-irradiance-flat = capteur d’éclairement propre et posé à plat, à côté du cuiseur
check-aimed = cuiseur orienté, et rien qui brûle près du foyer
check-empty = récipient vide, sec et propre : ni eau, ni aliment, ni graisse
check-no-plastic = ni plastique ni revêtement antiadhésif : il dépasse de loin 100 °C
check-dial = thermomètre dans ou sur le récipient, hors du faisceau ; il y reste
check-mirrors = miroirs de la boîte couverts ou repliés, pour ses facteurs de mérite
check-no-sun = pas de soleil sur le cuiseur jusqu’à la fin : à l’ombre ou détourné
check-in-place = récipient à sa place dans le cuiseur, comme quand il chauffe
# Lines to write on.
sheet-tester = opérateur
sheet-weighed = eau pesée, kg
sheet-began = première lecture, heure

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = heure
# As in English.
sheet-after = minutes
sheet-vessel = récipient, { $unit }
sheet-water = eau, { $unit }
# As in English
sheet-air = air, { $unit }
# Bft: Beaufort.
sheet-wind = vent, Bft
sheet-sky = ciel : clair ou nuage
sheet-irradiance = soleil, W/m²
sheet-expected = attendu, { $unit }
sheet-aim = orienté
sheet-notes = remarques

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Vent à vue, Beaufort (WMO-No. 8) : { $forces }.
# As in English
sheet-force = { $number } { $sign } ({ $speeds } m/s)
# What one sees of the wind on land, at each number of the Beaufort scale.
wind-sign-0 = la fumée monte tout droit
wind-sign-1 = la fumée dérive, les girouettes ne bougent pas
wind-sign-2 = on le sent au visage, les feuilles frémissent
wind-sign-3 = feuilles et petites brindilles bougent sans cesse
wind-sign-4 = poussière et papiers se soulèvent
wind-sign-5 = les petits arbres se balancent
wind-sign-6 = les grosses branches bougent
wind-sign-7 = des arbres entiers bougent
wind-sign-8 = des brindilles se cassent
# What the column of expected temperatures rests on. { $start }, { $air }: temperatures.
plan-expected = Attendu du cuiseur tel qu’évalué jusqu’ici, Ps(50) = { $power } W ± { $expanded } W (95 %) : { $load } chauffés à partir de { $start } sous un ciel clair, dans un air à { $air } comme lors de ses essais ; avec sa plage à 95 %. Une eau nettement en dessous indique de la brume, du vent, une mauvaise orientation ou un couvercle mal fermé.
# The models behind the numbers.
plan-models = Ciel clair d’après Ineichen et Perez 2002 pour { $elevation } m, trouble de Linke { $turbidity } (habituel pour un ciel clair) ; brume et poussière donnent moins. Soleil d’après NREL/TP-560-34302 ; un horizon plat.
plan-models-stated = Ciel clair d’après Ineichen et Perez 2002 pour { $elevation } m, trouble de Linke { $turbidity } (comme indiqué) ; brume et poussière donnent moins. Soleil d’après NREL/TP-560-34302 ; un horizon plat.
page-sheet-checks = STILL TO TRANSLATE
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = STILL TO TRANSLATE
page-sheet-caution = Attention.
caution-field-sheet = Ne regardez jamais dans le foyer ni vers le soleil. Le métal chaud et la vapeur brûlent : gants, couvercle écarté de vous. Éloignez les enfants et tout ce qui brûle ; restez près du cuiseur ; détournez-le du soleil avant d’y mettre les mains ; attachez-le contre le vent. De l’ombre et de l’eau pour vous. Jetez l’eau de l’essai. Les règlements locaux et la pratique des professionnels habilités passent en premier.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = Un récipient sec dépasse de loin 100 °C : il brûle dès qu’on le touche, et reste chaud longtemps après. Le plastique fond et les revêtements dégagent des fumées : ni l’un ni l’autre. N’y versez jamais d’eau tant qu’il est chaud : elle gicle et il se fend. L’herbe sèche, le tissu et les restes de graisse prennent feu : sol nu, de l’eau ou du sable à portée de main, et quelqu’un qui reste. Ne regardez jamais dans le foyer ni vers le soleil ; détournez-en le cuiseur avant d’y mettre les mains ; gants secs. Éloignez les enfants ; attachez-le contre le vent. De l’ombre et de l’eau pour vous. Les règlements locaux et la pratique des professionnels habilités passent en premier.
caution-field-sheet-cooling = On porte un récipient d’eau presque bouillante : chemin dégagé, personne dessus, couvercle tenu, les deux mains dans des gants secs ; mieux vaut le poser que se presser. La vapeur brûle : couvercle écarté de vous. Ne regardez jamais dans le foyer ni vers le soleil ; détournez-en le cuiseur, ou mettez-le à l’ombre, avant d’y mettre les mains, et voyez où va alors le foyer. Éloignez les enfants ; restez près du cuiseur. Jetez l’eau de l’essai. Les règlements locaux et la pratique des professionnels habilités passent en premier.

## Kinds of run, and what vessels store

run-kind-water = chauffage d’eau
run-kind-cooling = refroidissement, à l’ombre
run-kind-dry = récipient à sec
vessel-heat-stated = indiquée dans le fichier de campagne
vessel-heat-weighed = { $mass } kg ({ $material }) à { $heat } J/(kg K) (EN 12524:2000, telle que la reprend une bibliothèque logicielle libre)
# As in English
material-aluminium = aluminium
material-cast-iron = fonte
material-steel = acier
material-stainless-steel = acier inoxydable
material-copper = cuivre
material-glass = verre
material-ceramic = céramique
material-fired-clay = terre cuite
tested-vessel-heat = capacité thermique des récipients
tested-vessel-heat-text = { $heat } J/K : { $basis }
tested-loss-area = surface des récipients qui perd de la chaleur
# As in English
tested-loss-area-text = { $area } m²
tested-no-water = aucune : aucun essai de cette campagne ne chauffe d’eau
tested-vessel-temperature = température du récipient
error-vessel-temperature = thermomètre du récipient
error-vessel-heat = capacité thermique des récipients
known-vessel-heat = à { $percent } % près de ce qui est indiqué
budget-not-told-apart = non détaillée dans ce rapport
tested-instruments-note-dry = STILL TO TRANSLATE

## Page one of a campaign that heats no water

report-kind-without-water = Rapport d’essais de cuiseur solaire, sans évaluation
headline-label-none = Pas encore de chiffre
headline-no-water = STILL TO TRANSLATE
headline-spread = ± vaut pour 95 % : jours, lectures, instruments.
headline-spread-one-day = ± ne vaut que pour un jour, lectures et instruments ; ce n’est pas un 95 %.
headline-dry-plateau = Sous { $irradiance } W/m², le récipient vide est monté à { $vessel } : { $difference } K au-dessus de l’air à { $ambient }.
fact-reached = STILL TO TRANSLATE
fact-good-for = STILL TO TRANSLATE
fact-not-with = STILL TO TRANSLATE
headline-no-water-means = Rien de tout cela n’est une puissance de cuisson. Chauffez une charge d’eau pesée pour savoir à quelle vitesse le cuiseur cuit.
headline-nothing-drawn = Rien n’a pu être tracé : les constats disent pourquoi.

## All figures at a glance (page two)

summary-title = Tous les chiffres d’un coup d’œil
# Headers of a table of four columns.
page-summary-figure = chiffre
page-summary-value = valeur ± demi-largeur (95 %)
page-summary-good-for = sert à
page-summary-not-with = à ne pas comparer à
summary-one-day = (un jour)
summary-indicative = (indicatif)
summary-note = Chaque ± vaut pour 95 % : jours, relevés (avec leur dispersion là où une droite est ajustée) et instruments, avec l’incertitude indiquée ou supposée. Les surfaces comptent comme exactes.
summary-note-one-day = Là où il est écrit « un jour », ce que ferait un autre jour n’est pas dans le ±.
summary-note-indicative = Là où il est écrit « indicatif », ses conditions n’étaient pas celles de sa méthode, ou l’éclairement est estimé.
figure-ps50 = puissance de cuisson normalisée
figure-ps50-good-for = comparer des cuiseurs évalués selon la même norme
figure-ps50-not-with = la puissance sous un autre éclairement, ou des évaluations selon une autre norme
figure-gain = gain solaire
figure-gain-good-for = dire la puissance à tout éclairement, avec u
figure-gain-not-with = le gain d’après un capteur dans un autre plan
figure-loss = perte dans l’air
figure-loss-good-for = voir ce que fait l’isolation
figure-loss-not-with = la perte par un autre vent, ou par m²
figure-opto-thermal-ratio = rapport optothermique
figure-opto-thermal-ratio-good-for = dire jusqu’où une charge peut chauffer, quelle que soit sa taille
figure-opto-thermal-ratio-not-with = F1, qui est celui du cuiseur vide
figure-dry-difference = récipient à sec au-dessus de l’air, par W/m²
figure-dry-difference-good-for = comparer des versions d’un même cuiseur avec la même marmite
figure-dry-difference-not-with = d’autres marmites, ou un capteur dans un autre plan ; ce n’est pas une puissance de cuisson
figure-f1 = premier facteur de mérite
figure-f1-good-for = comparer des cuiseurs boîtes, à vide
figure-f1-not-with = des valeurs d’après un capteur tourné vers le soleil, ou avec des miroirs découverts
figure-f2 = second facteur de mérite
figure-f2-good-for = comparer des cuiseurs boîtes à pleine charge
figure-f2-not-with = d’autres charges ou d’autres bouts de la montée
figure-box-boiling = durée jusqu’à l’ébullition depuis l’ambiante
figure-box-boiling-good-for = dire combien de temps prend cette charge, sous ce soleil
figure-box-boiling-not-with = des durées pour une autre charge, un autre soleil ou une autre altitude
figure-time-constant = constante de temps du refroidissement
figure-time-constant-good-for = dire combien de temps cette charge reste chaude à l’ombre
figure-time-constant-not-with = d’autres charges : elle augmente avec l’eau
figure-loss-factor = facteur de perte
figure-loss-factor-good-for = comparer des récipients et leurs enveloppes
figure-loss-factor-not-with = des facteurs pour une autre surface, ou par un autre vent
figure-optical-factor = facteur optique
figure-optical-factor-good-for = comparer des miroirs et leur orientation
figure-optical-factor-not-with = des facteurs d’après le seul rayonnement direct, là où celui d’ici est global
figure-dish-boiling = durée jusqu’à l’ébullition depuis l’ambiante
figure-dish-boiling-good-for = dire combien de temps prend cette charge, sous ce soleil
figure-dish-boiling-not-with = des durées pour une autre charge, un autre soleil ou une autre altitude
figure-energy = rendement énergétique
figure-energy-good-for = comparer des essais sur la même plage de températures de l’eau
figure-energy-not-with = un rendement sur une autre plage, ou avec une charge froide
figure-exergy = rendement exergétique
figure-exergy-good-for = comparer comme avec l’énergie, l’eau chaude comptant davantage
figure-exergy-not-with = des valeurs avec une autre température du soleil ou une autre plage
figure-peak-exergy = pic d’exergie
figure-peak-exergy-good-for = comparer des cuiseurs de même taille sous le même soleil
figure-peak-exergy-not-with = des pics sous un autre éclairement
figure-quality-factor = facteur de qualité
figure-quality-factor-good-for = voir où gain et perte se rejoignent
figure-quality-factor-not-with = des publications qui définissent la perte autrement

## Procedures beside the rating

# As in English
procedure-label = { $name }, { $symbol }
# { $value } with its ±, or alone; { $unit }, or nothing.
# As in English
procedure-value = { $value } { $unit }
# An interval that reaches further on one side.
procedure-value-between = { $value } ({ $lower } à { $upper })
procedure-value-alone = { $value } (± non donné)
procedure-spread = STILL TO TRANSLATE
procedure-spread-one-day = STILL TO TRANSLATE
page-procedure-quantity = grandeur
procedure-boiling = La durée jusqu’à l’ébullition vaut pour { $load } d’eau de { $ambient } à { $boiling }, son point d’ébullition ici, sous un éclairement constant de { $irradiance } W/m² : les moyennes de l’essai. Elle est calculée, non chronométrée.
# { $limit }, °C.
evaporation = au-dessus de { $limit } °C, une part de la chaleur passe dans la vapeur, ce qu’aucune température ne montre : les chiffres valent pour un couvercle fermé et comptent la vapeur comme perte
evaporation-remedy = garder le couvercle fermé ; ne comparer que des essais qui finissent à des températures semblables

## Dry vessel

section-dry-vessel = Récipient à sec
dry-what = Un récipient vide et sombre, ou une plaque nue, est laissé au soleil jusqu’à ce qu’il ne chauffe plus. Sa température au-dessus de l’air, par W/m², met la lumière en regard des pertes. Ce n’est pas une puissance de cuisson.
dry-plane-normal = L’éclairement est celui d’un capteur tourné vers le soleil.
dry-plane-horizontal = L’éclairement est celui d’un capteur posé à plat : ne comparez qu’à ceux qui l’étaient aussi.
dry-plane-estimated = L’éclairement est estimé.
dry-plane-not-stated = Il n’est pas indiqué comment le capteur d’éclairement était tenu : ne comparez à aucun autre.
# { $runs }: more than one.
dry-mean-of = La valeur est la moyenne de { $runs ->
    [one] { $runs } essai
   *[other] { $runs } essais
} avec un palier.
# Headers of a table with a row a run: there is little room.
dry-head-run = essai
dry-head-plateau = palier, °C
# As in English
dry-head-ambient = air, °C
dry-head-irradiance = soleil, W/m²
# As in English
dry-head-difference = K m²/W
dry-head-initial = montée init., K/min
dry-head-reached = min jusqu’à { $level }
dry-caption = Température du récipient à sec depuis le début de chaque essai ; trait épais : le palier.
dry-alt = Courbes de la température du récipient à sec selon le temps, pour { $runs ->
    [one] { $runs } essai
   *[other] { $runs } essais
}. Le relevé le plus élevé est { $highest }.
dry-axis-time = temps depuis le premier relevé, min
dry-axis-vessel = récipient, °C
dry-key-vessel = relevés
dry-key-plateau = palier
dry-source = STILL TO TRANSLATE
dry-no-vessel = le journal n’a pas de température du récipient
dry-no-vessel-remedy = nommer la colonne du récipient sous [columns], comme vessel_temperature ; si le récipient contenait de l’eau, écrire kind = "water"
dry-no-irradiance = le journal n’a pas d’éclairement, le palier ne peut donc pas être rapporté au soleil
dry-no-irradiance-remedy = noter l’éclairement à chaque relevé, ou indiquer des périodes sans nuages et estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = les relevés qui comptent ne couvrent pas { $minutes } min sans trou, ce qu’il faut pour un palier avec ce thermomètre
dry-too-short-remedy = continuer les relevés, au moins toutes les vingt minutes, jusqu’à ce que la température soit restée la même pendant { $minutes } min
dry-sun-unsteady = le soleil n’est jamais resté à ± 20 W/m² de sa moyenne pendant { $minutes } min
dry-sun-unsteady-remedy = faire l’essai sous un ciel clair autour du midi solaire
dry-sun-weak = le soleil était régulier, mais avec au plus { $highest } W/m², en dessous de 600 W/m²
dry-sun-weak-remedy = faire l’essai autour du midi solaire, dans une saison plus lumineuse, ou sans brume
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = pas de palier : dans sa période régulière la plus chaude, à { $vessel } °C, le récipient montait encore de { $rate } K/min
dry-still-falls = pas de palier : dans sa période régulière la plus chaude, à { $vessel } °C, le récipient descendait de { $rate } K/min
dry-still-moves-remedy = commencer plus tôt, réorienter, et continuer jusqu’à ce que la température reste la même

## Box cooker

section-box-cooker = Facteurs de mérite d’un cuiseur boîte
box-what = F1 = (Tp − Ta)/H : de combien la boîte vide s’élève au-dessus de l’air par W/m² dans le plan horizontal. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))] : à quel point sa chaleur passe dans une pleine charge, d’après le temps τ pendant lequel l’eau monte de ΔT ; T, Ta et H sont des moyennes sur ce temps.
box-grade = classe
box-grade-a = STILL TO TRANSLATE
box-grade-none = STILL TO TRANSLATE
box-rests-on-dry = F1 repose sur { $runs ->
    [one] { $runs } essai à sec
   *[other] { $runs } essais à sec
} avec un palier.
box-rests-on-water = F2 repose sur { $runs ->
    [one] { $runs } montée
   *[other] { $runs } montées
} de l’eau de { $from } à { $to }.
box-caption = Eau selon le temps écoulé depuis qu’elle a passé la première température de la montée ; trait épais : ce que F1 et F2 donnent sous un soleil constant de même moyenne.
box-alt = Courbes de la température de l’eau selon le temps, pour { $runs ->
    [one] { $runs } montée
   *[other] { $runs } montées
} de { $from } à { $to }, avec les courbes que donnent F1 et F2.
box-axis-time = temps depuis le début de la montée, min
box-axis-water = eau, °C
box-key-water = relevés
box-key-told = d’après F1 et F2
box-source = STILL TO TRANSLATE
box-no-dry-run = il n’y a pas d’essai à sec, donc pas de F1, ni de F2 qui repose dessus
box-no-dry-run-remedy = laisser la boîte vide au soleil vers midi et enregistrer la température de sa plaque : kind = "dry"
box-no-plateau = aucun essai à sec n’a de palier, il n’y a donc pas de F1, ni de F2
box-no-plateau-remedy = voir ce qui manque aux essais à sec
box-plane-normal = l’éclairement a été mesuré face au soleil ; F1 et F2 sont définis pour un capteur posé à plat
box-plane-not-stated = il n’est pas indiqué comment le capteur d’éclairement était tenu ; F1 et F2 sont définis pour un capteur posé à plat
box-plane-estimated = l’éclairement est estimé ; F1 et F2 sont définis pour un capteur posé à plat
box-plane-remedy = poser le capteur à plat à côté de la boîte, et indiquer plane = "horizontal"
box-cover-mirrors = F1 et F2 valent pour une boîte dont les miroirs d’appoint, si elle en a, sont couverts ; aucun journal ne le montre
box-cover-mirrors-remedy = les couvrir pendant ces essais, et le dire dans les remarques
box-no-water-run = aucun essai ne chauffe d’eau, il n’y a donc pas de F2
box-no-heating = pas de montée de { $from } à { $to } °C sans trou, avec éclairement, dans { $runs ->
    [one] { $runs } essai
   *[other] { $runs } essais
} à l’eau, il n’y a donc pas de F2
box-no-heating-remedy = commencer en dessous de { $from } °C, continuer au-dessus de { $to } °C, et faire un relevé au moins toutes les vingt minutes
box-runs-left-out = essais à l’eau sans montée entière de { $from } à { $to } °C, qui ne comptent pas : { $runs }
# Loads in kg/m².
box-load-off = la charge était de { $load } kg/m² ; une pleine charge est d’environ { $full } kg/m²
box-load-off-remedy = peser { $full } kg d’eau pour chaque m² de vitrage ; l’évaluation demande 7 kg par m² de surface d’interception, une seule charge ne satisfait donc pas toujours les deux
# Both in K.
box-beyond-reach = dans { $rises ->
    [one] { $rises } montée
   *[other] { $rises } montées
}, l’eau est arrivée à { $end } K au-dessus de l’air, ce qui ne se peut pas avec ce F1 : F1·H y vaut { $reach } K. Une telle montée ne compte pas
box-no-upper-end = F1·H vaut { $reach } K, si près des { $end } K dont la fin de la montée de l’eau est au-dessus de l’air que F2 n’a pas de bout supérieur
box-near-reach = la fin de la montée de l’eau, { $end } K au-dessus de l’air, est proche de F1·H, { $reach } K : un F1 plus bas de 1 % rend F2 plus haut de { $more } %
box-reach-remedy = faire l’essai sous un soleil plus fort, ou finir la montée plus bas
box-one-day = les essais à sec ou les montées sont d’un seul jour, les plages ne sont donc pas des plages à 95 %
box-one-day-remedy = faire des essais d’autres jours

## Concentrating cooker

section-dish = Essai de refroidissement et de chauffage
dish-what = À l’ombre, la charge perd sa température au-dessus de l’air avec la constante de temps τ0 ; avec la capacité thermique C de l’eau et des récipients, C/τ0 est sa perte. F′UL est cette perte pour chaque m² de la surface des récipients. Au soleil, F′η0 est la part de la lumière sur la surface d’interception que reçoit la charge, perte ajoutée.
dish-loss = perte dans l’air par refroidissement, F′UL·At
dish-rests-on-cooling = La perte repose sur { $runs ->
    [one] { $runs } essai de refroidissement
   *[other] { $runs } essais de refroidissement
}, de { $from } à { $to }.
dish-rests-on-vessels = Les récipients comptent pour { $heat } J/K : { $basis }.
dish-rests-on-heating = Le facteur optique repose sur { $runs ->
    [one] { $runs } chauffage
   *[other] { $runs } chauffages
}, chacun de 5 K au-dessus de l’air à 5 K en dessous de l’ébullition, aussi loin qu’il va.
dish-caption = Eau au-dessus de la température moyenne de l’air depuis le début de chaque essai de refroidissement ; trait épais : ce que donne sa constante de temps dans un air constant.
dish-alt = Courbes de la température de l’eau au-dessus de l’air selon le temps, pour { $runs ->
    [one] { $runs } essai de refroidissement
   *[other] { $runs } essais de refroidissement
}, avec la courbe exponentielle. La constante de temps moyenne est de { $minutes } minutes.
dish-axis-time = temps depuis le premier relevé, min
dish-axis-difference = eau au-dessus de l’air, K
dish-key-water = relevés
dish-key-told = par la constante de temps
dish-source = STILL TO TRANSLATE
dish-no-cooling-run = il n’y a pas d’essai de refroidissement, donc ni constante de temps, ni perte, ni facteur optique
dish-no-cooling-run-remedy = laisser refroidir une charge chaude à l’ombre, et l’enregistrer : kind = "cooling"
dish-begins-too-cool = { $log } : l’eau commence à { $above } K au-dessus de l’air, et un essai de refroidissement à { $least } K au moins ; il ne compte pas
dish-begins-too-cool-remedy = commencer près de l’ébullition
dish-warms = { $log } : l’eau est devenue plus chaude de { $rise } K qu’elle ne l’était avant, le soleil l’a donc atteinte, ou de l’eau chaude a été ajoutée ; il ne compte pas
dish-warms-remedy = détourner le cuiseur du soleil ou mettre toute l’ouverture à l’ombre
dish-cooling-too-short = { $log } : avant un trou de plus de vingt minutes ou une période exclue, il y a trop peu de relevés, ou une baisse de moins d’un cinquième de la température au-dessus de l’air du début ; il ne compte pas
dish-cooling-too-short-remedy = faire un relevé toutes les cinq minutes ou plus souvent, pendant une heure ou plus
dish-no-loss-area = la surface des récipients n’est pas indiquée, la perte n’est donc donnée qu’en W/K
dish-no-loss-area-remedy = indiquer loss_area_m2 sous [cooker] : parois et couvercle des récipients
dish-no-vessel-heat = ce que les récipients emmagasinent n’est pas indiqué, et ne compte pas : perte et facteur optique sont trop faibles de cette part
dish-no-vessel-heat-remedy = peser les récipients vides : vessel_mass_kg et vessel_material sous [load]
dish-no-heating = aucun essai à l’eau n’a de montée de { $rise } K avec éclairement, sans trou ni période exclue, il n’y a donc pas de facteur optique
dish-no-heating-remedy = enregistrer un chauffage d’au moins { $rise } K au soleil, avec éclairement
dish-plane-not-normal = l’éclairement n’a pas été mesuré face au soleil, et le facteur optique vaut pour le rayonnement direct
dish-plane-estimated = l’éclairement est estimé, et le facteur optique prend celui du rayonnement direct
dish-plane-remedy = garder le capteur tourné vers le soleil, et indiquer plane = "normal"
dish-global-not-beam = STILL TO TRANSLATE
dish-global-not-beam-remedy = dire dans les remarques si le capteur ne voyait que le rayonnement direct
dish-no-end = compte tenu de ce dont les instruments peuvent se tromper, la plage de l’un des chiffres n’a pas de bout, et il n’est pas donné
dish-no-end-remedy = mesurer l’éclairement avec un capteur mieux connu, et indiquer son incertitude
dish-one-day = le refroidissement ou le chauffage est d’un seul jour, les plages ne sont donc pas des plages à 95 %
dish-one-day-remedy = faire des essais d’autres jours

## Energy and exergy

section-efficiency = Énergie et exergie
efficiency-what = Rendement énergétique : chaleur que l’eau a absorbée, sur le rayonnement solaire reçu par la surface d’interception. Rendement exergétique : la même chose pour ce qui pourrait fournir du travail, si bien que l’eau chaude compte plus que l’eau tiède. Pic d’exergie : le sommet de la parabole de l’exergie selon l’écart de température ; facteur de qualité : le pic sur l’exergie de la chaleur perdue à cet endroit.
# { $range } in °C.
efficiency-rests-on = Ils reposent sur { counted-intervals } aux relevés sûrs, eau à { $range }, { $irradiance } W/m² en moyenne. Les récipients ne comptent pas.
efficiency-peak-at = Le pic est à { $difference } K au-dessus de l’air, sous le soleil de l’essai ({ $irradiance } W/m² en moyenne).
efficiency-caption = STILL TO TRANSLATE
efficiency-caption-no-peak = STILL TO TRANSLATE
efficiency-alt = Nuage de points de l’exergie en watts selon l’écart de température en kelvins, { counted-intervals }.
efficiency-axis-difference = écart de température, Td, K
efficiency-axis-exergy = exergie, W
efficiency-key-intervals = intervalles
efficiency-key-parabola = parabole
efficiency-source = STILL TO TRANSLATE
efficiency-plane = l’éclairement a été mesuré avec un capteur posé à plat : là où la surface d’interception fait face au soleil, le rayonnement solaire est compté trop petit, et les rendements, qui en sont des parts, sont trop élevés
efficiency-plane-remedy = ne comparer qu’avec des essais dont le capteur était à plat
efficiency-no-peak = l’exergie n’a pas de point le plus haut parmi les intervalles, il n’y a donc ni pic ni facteur de qualité
efficiency-no-peak-remedy = faire l’essai de 5 K au-dessus de l’air jusque près de l’ébullition
efficiency-no-loss = la perte peut être nulle, il n’y a donc pas de facteur de qualité
efficiency-no-loss-remedy = faire des essais sur une plage plus large de températures de l’eau, et sur plus de jours
efficiency-one-day = tout est d’un seul jour, les plages ne sont donc pas des plages à 95 %
efficiency-one-day-remedy = faire des essais d’autres jours

## Where no water heats

tested-method-none = aucune de la norme : aucun essai ne chauffe de l’eau
tested-environment-dry = Environnement des paliers
tested-environment-cooling = Environnement des essais de refroidissement
tested-no-plateau = aucun palier

## On the terminal: the table of report, and what stands below it

# Headers of the table: there is little room.
terminal-campaign = STILL TO TRANSLATE
terminal-rating = STILL TO TRANSLATE
terminal-r-squared = STILL TO TRANSLATE
terminal-used = STILL TO TRANSLATE
terminal-days = STILL TO TRANSLATE
terminal-conformity = STILL TO TRANSLATE
terminal-report = STILL TO TRANSLATE
# Data that nobody measured.
terminal-invented = STILL TO TRANSLATE
# What weakens a rating, each behind its level: "indicative only; horizontal sensor".
terminal-horizontal = STILL TO TRANSLATE
terminal-plane-not-stated = STILL TO TRANSLATE
terminal-one-day = STILL TO TRANSLATE
# Of several campaigns that share a note; { $names }: their names.
terminal-campaigns = STILL TO TRANSLATE
terminal-more = STILL TO TRANSLATE

## What check says of the other procedures

# The first line; { $level }: one of those that begin with level-, { $title }: the campaign's.
check-verdict = STILL TO TRANSLATE
# { $caveats }: irradiance-estimated and the like.
check-verdict-with = STILL TO TRANSLATE
# Labels of the lines below it, and what stands beside them.
check-next = STILL TO TRANSLATE
check-so-far = STILL TO TRANSLATE
check-aim = STILL TO TRANSLATE
check-name = STILL TO TRANSLATE
check-rating = STILL TO TRANSLATE
check-no-number = STILL TO TRANSLATE
check-none-used = STILL TO TRANSLATE
check-not-valid = STILL TO TRANSLATE
# What to do next. { $command } stays as it is.
check-next-report = STILL TO TRANSLATE
# { $remedy }: what to do before more is measured.
check-next-then = STILL TO TRANSLATE
# Headers of the tables of runs: there is little room.
check-run = STILL TO TRANSLATE
check-date = STILL TO TRANSLATE
check-readings = STILL TO TRANSLATE
check-intervals = STILL TO TRANSLATE
check-used = STILL TO TRANSLATE
check-aside = STILL TO TRANSLATE
check-kind = STILL TO TRANSLATE
check-from = STILL TO TRANSLATE
check-to = STILL TO TRANSLATE
# In the last column of the table, behind a number of intervals: two words at most.
aside-water-below-window = STILL TO TRANSLATE
aside-water-above-window = STILL TO TRANSLATE
aside-ambient-out-of-range = STILL TO TRANSLATE
aside-irradiance-low = STILL TO TRANSLATE
aside-irradiance-high = STILL TO TRANSLATE
aside-irradiance-unsteady = STILL TO TRANSLATE
aside-wind-high = STILL TO TRANSLATE
aside-outside-solar-window = STILL TO TRANSLATE
aside-reading-gap = STILL TO TRANSLATE
aside-excluded-by-tester = STILL TO TRANSLATE
aside-not-cloudless = STILL TO TRANSLATE
# Headings.
check-findings = STILL TO TRANSLATE
check-notes = STILL TO TRANSLATE
check-set-aside = STILL TO TRANSLATE
check-notices = STILL TO TRANSLATE
check-how-read = STILL TO TRANSLATE
# Below the table. { $run }: its name, { $shortest }, { $longest }: minutes.
check-hole = STILL TO TRANSLATE
check-not-normalised = STILL TO TRANSLATE
# What helps where intervals are set aside: what the person beside the cooker can do.
helps-water-below-window = STILL TO TRANSLATE
helps-water-above-window = STILL TO TRANSLATE
helps-ambient-out-of-range = STILL TO TRANSLATE
helps-irradiance-low = STILL TO TRANSLATE
helps-irradiance-high = STILL TO TRANSLATE
helps-irradiance-unsteady = STILL TO TRANSLATE
helps-wind-high = STILL TO TRANSLATE
helps-outside-solar-window = STILL TO TRANSLATE
helps-reading-gap = STILL TO TRANSLATE
helps-excluded-by-tester = STILL TO TRANSLATE
helps-not-cloudless = STILL TO TRANSLATE
# Behind helps-outside-solar-window.
helps-by-clock = STILL TO TRANSLATE
# Of several logs, { $what }: what is said of each of them.
check-of-logs = STILL TO TRANSLATE
check-figures = Autres chiffres à ce jour
check-no-figures = Aucun autre chiffre pour l’instant.
box-grade-one-day = STILL TO TRANSLATE
box-grade-not-flat = STILL TO TRANSLATE
box-glass = Le vitrage est de { $area } m², comme indiqué.
box-glass-not-stated = STILL TO TRANSLATE
box-beyond-reach-remedy = F1 est trop bas, ou le capteur a trop peu indiqué dans cet essai : vérifier que le palier a été atteint, que les miroirs étaient couverts de la même façon, et que le capteur était à plat
boiling-gets-to = pas de durée jusqu’à l’ébullition : sous le soleil de l’essai, l’eau arrive à { $highest }, et elle bout à { $boiling }
boiling-may-not = pas de durée jusqu’à l’ébullition : compte tenu de ce dont les chiffres peuvent se tromper, il se peut que l’eau n’arrive pas à { $boiling }, où elle bout
boiling-remedy = faire l’essai sous un soleil plus fort, ou améliorer le cuiseur
dish-runs-left-out = essais à l’eau sans montée de { $rise } K au soleil qui n’ait ni trou ni période exclue, et qui ne comptent pas : { $runs }
dry-no-ambient = l’air n’a pas été relevé à moins de deux heures des périodes régulières
dry-no-ambient-remedy = relever l’air au moins une fois sur deux
dry-may-get-hotter = sur son palier, le récipient montait encore de { $rate } K/min : d’après sa montée initiale, il peut finir { $more } K plus chaud
dry-no-end = la différence par W/m² n’est pas donnée : dans les limites d’erreur de l’éclairement, sa plage n’a pas de fin
efficiency-peak-unsure = il y a un pic, mais pas sans l’un des jours, ou pas dans tout ce dont les instruments peuvent se tromper : il n’est pas donné
efficiency-peak-unsure-remedy = faire des essais sur plus de jours, chacun de 5 K au-dessus de l’air jusque près de l’ébullition
efficiency-too-much = l’eau a absorbé plus de chaleur que le rayonnement solaire sur la surface d’interception, ce qui ne se peut pas
efficiency-too-much-remedy = vérifier la surface d’interception, la charge et les unités
tested-instruments-note-cooling = STILL TO TRANSLATE

## Comparison: figures beside the rating

section-beside = Chiffres à côté de l’évaluation
# A list of several campaigns for each figure: headers, and cells. Numbers are those of campaigns.
beside-head-value = STILL TO TRANSLATE
beside-head-apart = STILL TO TRANSLATE
beside-from-none = STILL TO TRANSLATE
# A cell: how many of those that it is compared with.
beside-from-so-many = STILL TO TRANSLATE
# { $reasons }: some of beside-not-compared-why, with ";" between them.
beside-not-compared-list = STILL TO TRANSLATE
# { $pairs }: some of beside-not-compared-with, with ";" between them.
beside-not-compared-why = STILL TO TRANSLATE
# Numbers of campaigns.
beside-not-compared-with = STILL TO TRANSLATE
beside-pairs = STILL TO TRANSLATE
# { $numbers }: "2, 5–7".
beside-list-note = STILL TO TRANSLATE
beside-first-only = STILL TO TRANSLATE
# A title where there is no rating.
beside-title = STILL TO TRANSLATE
beside-title-hotter = STILL TO TRANSLATE
beside-title-not-told = STILL TO TRANSLATE
beside-in-all = STILL TO TRANSLATE
# Headers of a table. "First" and "second" are the campaigns of a pair, second − first.
beside-figure = chiffre
beside-difference = différence
beside-verdict = distingués ?
# After the difference of two percentages.
beside-points = points de pourcentage
# In that column, and on a terminal after the difference.
beside-told-apart = distingués
beside-not-told-apart = non distingués
beside-apart-when-tested = distincts lors des essais
# { $pairs } is more than one.
beside-by-chance = non distingués parmi { $pairs } paires
# { $why }: one of figure-unlike-….
beside-not-compared = non comparés : { $why }
# { $verdict }: one of those above; { $marks }: one or several of the next three.
# As in English
beside-marked = { $verdict } ({ $marks })
beside-one-day = un jour
beside-indicative = indicatif
beside-vessels-not-stated = récipients non indiqués
figure-unlike-vessels = autres récipients
figure-unlike-plane = éclairement dans un autre plan
figure-unlike-plane-not-stated = plan de l’éclairement non indiqué
figure-unlike-load-or-sun = charge, soleil ou air différents
figure-unlike-load = autre charge
figure-unlike-span = autre plage de températures de l’eau
figure-unlike-vessel-heat = chaleur des récipients comptée d’un seul côté
figure-unlike-no-budget = son ± n’est pas détaillé source par source
beside-note = Chaque ± vaut pour 95 %. Ce que les deux ont en commun s’annule dans la différence ; deux chiffres dont les plages se recouvrent peuvent donc quand même différer.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = Le récipient à sec de { $second } devient plus chaud, par W/m², que celui de { $first } : { $difference } K m²/W de plus ({ $interval }), { $share } % : distingués.
beside-cooler = Le récipient à sec de { $second } devient moins chaud, par W/m², que celui de { $first } : { $difference } K m²/W de moins ({ $interval }), { $share } % : distingués.
beside-hotter-one-day = Le récipient à sec de { $second } est devenu plus chaud, par W/m², que celui de { $first } lors des essais : { $difference } K m²/W de plus ({ $interval }), { $share } %. Ils n’ont pas été essayés sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : essayez de nouveau les deux d’autres jours.
beside-cooler-one-day = Le récipient à sec de { $second } est devenu moins chaud, par W/m², que celui de { $first } lors des essais : { $difference } K m²/W de moins ({ $interval }), { $share } %. Ils n’ont pas été essayés sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : essayez de nouveau les deux d’autres jours.
beside-hotter-by-chance = Il n’est pas dit lequel des récipients à sec devient plus chaud par W/m², celui de { $second } ou celui de { $first } : ils diffèrent de { $difference } K m²/W ({ $interval }), { $share } %, mais parmi { $pairs } paires, l’une peut différer autant par hasard.
beside-hotter-not-told = On ne peut pas dire lequel des récipients à sec devient plus chaud par W/m², celui de { $second } ou celui de { $first } : { $second } a { $difference } K m²/W de plus, { $share } %, et toute valeur de { $interval } est compatible avec les données.
beside-cooler-not-told = On ne peut pas dire lequel des récipients à sec devient plus chaud par W/m², celui de { $second } ou celui de { $first } : { $second } a { $difference } K m²/W de moins, { $share } %, et toute valeur de { $interval } est compatible avec les données.
beside-hotter-not-compared = Jusqu’où chauffent les récipients à sec de { $second } et de { $first } n’est pas comparé : { $why }.
beside-nothing-shared = { $second } et { $first } n’ont aucun chiffre en commun.
beside-others = Parmi les autres chiffres de { $second } et de { $first }, on peut en comparer { $compared }, et parmi ceux-là en distinguer { $apart }.
comparison-dry-note = Palier : là où le récipient ne chauffait plus. K m²/W : récipient au-dessus de l’air par W/m², ± pour 95 %.
comparison-dry-caption = STILL TO TRANSLATE
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = STILL TO TRANSLATE
# As in English
comparison-practice-no-rating = JCGM 100:2008 pour les différences
beside-note-difference = L’incertitude d’une différence de chiffres à côté de l’évaluation comprend la dispersion et les jours des deux campagnes, chacune avec ses propres degrés de liberté, et ce que leurs instruments n’ont pas en commun. Ce qu’un jour fait aux deux n’en est pas retiré, ce qui l’agrandit. L’évaluation a sa propre comparaison ; le gain et la perte aussi, là où les deux ont une évaluation et un bilan thermique.
beside-note-alike = Des chiffres sont comparés là où les fichiers de campagne laissent penser qu’ils sont semblables : ceux par W/m², éclairement dans un même plan ; ceux de récipients à sec ou qui refroidissent, autant de récipients, avec la même capacité thermique et la même surface à 2 % près ; durées jusqu’à l’ébullition, rendement et pic d’exergie, éclairement à 2 % près et ambiante à 2 K près ; durées jusqu’à l’ébullition, charge à 2 % près et point d’ébullition à 2 K près ; rendement, une plage de températures de l’eau à 5 K près à ses bouts et à 2 K près en moyenne ; F2, une charge par m² à 10 % près ; constante de temps, charge à 2 % près. Ces limites sont de pratique courante, sans source publiée. « Récipients non indiqués » : il n’est pas indiqué qu’ils étaient semblables.
beside-note-pairs = « Distingués » : le p de la différence est inférieur à 0,05, corrigé par la méthode de Holm pour les paires où le chiffre est comparé, sur { $pairs } en tout ; il n’est pas corrigé du nombre de chiffres. Une différence de jours isolés n’est jamais dite distinguée.

## Slips that show

dry-sun-down = pendant le palier, le soleil était sous l’horizon : l’horloge, le fuseau horaire ou le lieu est faux
dry-sun-down-remedy = corrigez time_zone, latitude et longitude sous [site], ou les heures du journal
dry-colder-than-air = le récipient indique { $below } K de moins que l’air le plus frais de l’essai : l’un des deux est dans une autre unité que celle indiquée
dry-very-hot = STILL TO TRANSLATE
dry-unit-remedy = indiquez vessel_temperature et ambient_temperature sous [units], "°F" ou "°C", comme chaque thermomètre l’affiche
dish-losses-differ = la perte par refroidissement, { $cooling } W/K, et celle du bilan thermique, { $balance } W/K, diffèrent de plus que leurs ± : le soleil a atteint la charge qui refroidissait, ou le vent était autre
dish-losses-differ-remedy = ombragez toute l’ouverture et la marmite pendant qu’elle refroidit, et notez le vent dans les deux
box-plane-turned = les lectures du capteur à plat ont été tournées vers le soleil par estimate = "from-horizontal" ; F1 et F2 sont définis pour elles telles quelles
box-plane-turned-remedy = faites une seconde campagne des mêmes journaux sans estimate, avec plane = "horizontal"
notice-long-run-other = { $log } : les lectures couvrent { $days } jours, un essai est un test d’un jour ; vérifiez les dates, ou indiquez start et end
finding-no-water = aucun essai de cette campagne ne chauffe de l’eau, il n’y a donc rien à évaluer
finding-no-water-remedy = chauffez une charge d’eau pesée pour une évaluation ; les autres chiffres valent par eux-mêmes
instrument-assumed = non indiquée ; prise comme celle de la classe { $class } : { $basis }
