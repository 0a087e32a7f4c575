# French (français), for West Africa and France. Not yet checked by a speaker.
#
# Words kept to: test = essai, run = série (de mesures), interval = intervalle, log = fichier
# de mesures, reading = relevé, used = retenu, set aside = écarté, rating = résultat, finding
# = écart constaté, irradiance = irradiance, intercept area = surface de captation, line =
# droite, scatter = dispersion, budget = bilan, load = charge, pot = marmite, vessel =
# récipient, to aim = orienter, focus = foyer, stove = fourneau.
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
ends-of-range = { $low } à { $high }
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

attached-campaign = Fichier de campagne : l’objet de l’essai, où et avec quoi
attached-shared = Clés communes à plusieurs campagnes
attached-log = Fichier de mesures, octet pour octet, tel qu’il a été lu
attached-photo = Photo du cuiseur, telle qu’elle figure dans le rapport
attached-rating = Tous les résultats sous forme de données, en pleine précision
attached-intervals = Une ligne par intervalle, retenu ou écarté
attached-comparison = Comparaison sous forme de données, en pleine précision
attached-pairs = Une ligne par paire de campagnes
attached-plan = Plan de la journée sous forme de données
checkable = Les données sont dans ce PDF. Chacun peut le vérifier : « simmerline verify FICHIER », version { $version }, le recompose à partir d’elles et dit si c’est le fichier émis.
checkable-from = Les données sont dans ce PDF. Chacun peut le vérifier : « simmerline verify FICHIER », version { $version } (depuis { $address }), le recompose à partir d’elles et dit si c’est le fichier émis.
checkable-beside = { $said } Les fichiers de mesures de plus de { $limit } Mo ne sont pas dedans : gardez-les à côté, car la vérification en a besoin.
checkable-not = Ce PDF ne contient pas de données ; il ne peut donc pas être vérifié seul. Il donne le SHA-256 de chaque fichier d’entrée.
# On the web page.
page-not-checkable = Cette page web ne contient pas de données : seul le PDF de ce rapport peut être vérifié.

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
report-kind-not-valid = Rapport d’essai de cuiseur solaire : non valide
report-kind-no-rating = Rapport d’essai de cuiseur solaire : sans résultat
report-kind-estimated = Rapport d’essai de cuiseur solaire : indicatif, irradiance estimée
# { $title } is the tester's own.
report-title-indicative = { $title } (indicatif)
report-title-not-valid = { $title } (non valide)
report-title-no-rating = { $title } (sans résultat)
report-title-estimated = { $title } (indicatif, irradiance estimée)
report-invented = Données inventées, pour démonstration
report-statement = Les résultats ne valent que pour le cuiseur soumis à l’essai. Reproduction autorisée dans son intégralité seulement.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = irradiance estimée
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Rapport [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = page [page] sur [pages]
letterhead-client = pour { $client }
letterhead-client-contact = pour { $client }, { $contact }
letterhead-number = Rapport { $number }
letterhead-issued = émis le { $date }
sign-tested = Essai réalisé par
sign-authorised = Autorisé par
sign-date = Date et signature
letterhead-hashes = Début du SHA-256 des fichiers d’entrée : { $hashes } (en entier : section { $section }).
letterhead-hashes-more = Début du SHA-256 des fichiers d’entrée : { $hashes } et { $more } de plus (en entier : section { $section }).

## Page one: how far the rating conforms

level-conforms = Conforme
level-conforms-with-notes = Conforme avec remarques
level-indicative = Indicatif seulement
level-not-valid = Non valide
level-no-rating = Sans résultat
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = Selon ASAE { $procedure }, limites à la section { $section }.
headline-conforms-with-notes = Selon ASAE { $procedure }, limites à la section { $section } ; les remarques sont ci-dessous.
# Sous l’une ou l’autre des deux : sur quoi elles reposent.
headline-conforms-rests-on = Personne n’a vérifié les limites, consignées de mémoire d’après la norme, ni la position des capteurs, déclarée par l’opérateur.
headline-indicative = Non conforme à la norme ASAE { $procedure } : voir les écarts constatés ci-dessous
headline-indicative-missing = Non conforme à la norme ASAE { $procedure } ; il manque encore : { $missing }
headline-indicative-missing-too = Non conforme à la norme ASAE { $procedure } : voir les écarts constatés. Il manque aussi : { $missing }
headline-not-valid = D’après ces relevés, l’eau gagnerait plus de chaleur que le rayonnement solaire reçu par le cuiseur. Vérifier la surface de captation, la charge et les unités.
# { $power }: "55 ± 12 W (not 95 %)".
headline-no-rating-balance = Le bilan thermique donne { $power } à 700 W/m² et 50 K : indicatif, pas un résultat de la norme (section { $section }).
headline-no-rating-missing = Sans résultat selon ASAE { $procedure } ; il manque encore : { $missing }
headline-without-rating = Sans résultat selon ASAE { $procedure } : voir les écarts constatés ci-dessous
headline-counts = { counted-used } (min. { $least_intervals }) · { counted-days } ({ $least_days }) · R² { $r_squared } ({ $least_r_squared })
headline-counts-no-line = { counted-used } (min. { $least_intervals }) · { counted-days } ({ $least_days })
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
headline-unit-one-day = W (pas à 95 %)
headline-what-it-is = Puissance pendant l’essai, ramenée à 700 W/m² comme ASAE { $procedure } la définit, quand l’eau est à { $difference } au-dessus de l’air
page-no-rating = sans résultat
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = irradiance estimée { $way }
headline-horizontal = irradiance mesurée à l’horizontale, non face au soleil
headline-plane-not-stated = plan du capteur d’irradiance non indiqué
headline-one-day = essai en un seul jour : la variation d’un jour à l’autre n’est pas dans le ±
headline-days-not-in-spread = aucun jour ne peut être laissé de côté dans l’ajustement : la variation d’un jour à l’autre n’est pas dans le ±
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-extrapolated = une extrapolation : 50 K se trouve hors de ce qui a été observé
headline-interval = intervalle à 95 % : { $low } à { $high } W
headline-interval-one-day = intervalle sans la variation d’un jour à l’autre, non à 95 % : { $low } à { $high } W
fact-delivers = Il fournit
fact-took-up = { $power } ± { $half_width } W à de l’eau à { $difference } au-dessus de l’air, sous les { $irradiance } W/m² de l’essai
fact-took-up-estimated = { $power } ± { $half_width } W à de l’eau à { $difference } au-dessus de l’air, sous une irradiance estimée à { $irradiance } W/m²
fact-lost = aucune chaleur : de l’eau à { $difference } au-dessus de l’air perdait { $power } ± { $half_width } W sous les { $irradiance } W/m² de l’essai
fact-scaled = sous 700 W/m², { $power } ± { $half_width } W d’après le bilan thermique, qui met à l’échelle le gain mais non la perte (section { $section })
fact-scaled-loses = une perte de { $power } ± { $half_width } W sous 700 W/m² d’après le bilan thermique (section { $section })
fact-good = Performance
fact-per-area = { $power } ± { $half_width } W par m² de surface de captation, { $percent } % de 700 W/m². Publié pour d’autres cuiseurs, par d’autres méthodes, donc en ordre de grandeur : { $range } W/m² (voir { summary-title }).
fact-kitchen = En cuisine
fact-heats = { $amount } d’eau { $journey } en { $time } environ ({ $range }), sous { $irradiance } W/m²
fact-may-not-heat = l’eau risque de ne pas passer { $journey } sous { $irradiance } W/m²
fact-does-not-heat = l’eau ne passe pas { $journey } sous { $irradiance } W/m²
fact-dry = Récipient vide
fact-sure = Incertitude
fact-parts = Les instruments font { $instruments } % de son carré (section { $section }).
fact-parts-assumed = Les instruments, certains supposés, font { $instruments } % de son carré (section { $section }).

## Page one: the rating in plain words

# As in English
headline-two-kilograms = 2 kg
headline-heat-ends = la chaleur utile cesse vers { $end } ({ $range })
headline-heat-ends-or-boils = la chaleur utile cesse vers { $end } ({ $range }, où l’eau bout)
headline-boils-first = il chauffe encore à l’ébullition
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = de { $degrees }
journey-degrees = { $start } à { $target }
journey-to-boiling = de { $start } à l’ébullition ({ $boiling } ici)
# { $result } as in stagnation-result.
headline-dry = Le récipient à sec est monté à { $difference } au-dessus de l’air sous { $irradiance } W/m² : { $result } (section { $section }).

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
# As in English
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
# As in English
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation } ; R² = { $r_squared } ; { counted-used } sur { counted-days }, Td de { $lowest } à { $highest } K
# R² of points that all have the same power.
undefined = indéfini
figure-title-falling = La puissance de cuisson normalisée baisse quand l’eau chauffe : { $equation }, R² { $r_squared }
figure-title-falling-estimated = La puissance de cuisson normalisée, avec irradiance estimée, baisse quand l’eau chauffe : { $equation }, R² { $r_squared }
figure-title-rising = La puissance de cuisson normalisée ne baisse pas quand l’eau chauffe : { $equation }, R² { $r_squared }
figure-title-rising-estimated = La puissance de cuisson normalisée, avec irradiance estimée, ne baisse pas quand l’eau chauffe : { $equation }, R² { $r_squared }
figure-title-no-line = Aucune droite ne peut être ajustée
figure-title-not-valid = Puissance de cuisson normalisée telle que la donnent les relevés ; non valide, donc sans droite
# In the figure of page one, beside what they name.
# As in English
figure-used = { counted-used }
figure-aside = écartés : { $count }
figure-aside-most = le plus souvent : { $reason } ({ $count })
# Where another reason is as frequent.
figure-aside-among = entre autres : { $reason } ({ $count })
figure-band-dark = foncé : dispersion et jours
figure-band-light = clair : avec les instruments (95 %)
# Where no other day tells how days differ.
figure-band-dark-one-day = foncé : dispersion, sans les jours
figure-band-light-one-day = clair : avec les instruments ; pas 95 %
# Read out to those who do not see the figure.
# As in English
power-line-caption = { $facts }.
power-line-alt = Nuage de points de la puissance de cuisson normalisée en watts selon l’écart de température entre l’eau et l’air ambiant en kelvins. { $facts } ; écartés : { $aside }. La droite indique { $power } watts à 50 kelvins.
power-line-estimated = Irradiance estimée : { $text }
no-line-facts = { counted-used }, écartés : { $aside } ; aucune droite ne peut être ajustée
not-valid-facts = { counted-used }, écartés : { $aside } ; non valide, donc sans droite
no-line-alt = Nuage de points de la puissance de cuisson normalisée selon l’écart de température : { $facts }.
page-findings = Écarts constatés et corrections
# Below those that page one has room for.
page-findings-next = Tous les écarts constatés et leurs corrections sont à la page suivante.
# Where the rating conforms with notes.
page-findings-notes = Remarques, et ce qui les lèverait
conditions-title = Conditions : permises (fond ombré), observées dans les intervalles retenus (barre et valeurs), intervalles écartés (à droite)
conditions-track = { $name } : { $observed }, écartés : { $count }
# As in English
brief-irradiance = Irradiance
brief-irradiance-change = Variation de l’irradiance dans un intervalle
brief-wind = Vent moyen et vent soutenu
brief-ambient = Température ambiante moyenne
brief-water-above = Eau au-dessus de l’ambiante, au début et à la fin
brief-water-below = Eau en dessous de l’ébullition, au début et à la fin
# { $what }: one of the next or of those above, of irradiance.
brief-estimated = { $what }, estimée
brief-water-lowest = Température la plus basse de l’eau
brief-water-highest = Température la plus haute de l’eau
brief-solar-time = Heure solaire
page-before-you-cook = Avant de cuisiner.
headline-caution = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et ce résultat ne dit rien de la sécurité des aliments. Lisez les mises en garde de la section { $section } avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.
headline-caution-no-rating = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et ces chiffres ne disent rien de la sécurité des aliments. Lisez les mises en garde de la section { $section } avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.
# What others measured, on page two, to hold a rating against.
yardstick-own = Ps(50) par m² de surface de captation : { $power } ± { $half_width } W/m², { $percent } % de 700 W/m².
yardstick-parabolic = Publié, connu par les résumés seulement : un cuiseur parabolique, { $value } W/m² (rendement énergétique de 2,8 à 15,7 %, appliqué à 700 W/m² ; { $source }) ;
yardstick-box = un cuiseur boîte, { $value } W/m² (27 W pour 0,408 m² sous 750 W/m² et plus ; { $source }).
yardstick-caution = Aucun des deux n’a été évalué selon ASAE S580.1 : ils montrent l’ordre de grandeur et ne servent pas à évaluer.

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = on a retenu { counted-intervals }, la norme en exige { $least }
finding-too-few-intervals-own = on a retenu { counted-intervals }, la limite propre à la campagne en demande { $least }
finding-too-few-intervals-remedy = { missing-intervals } que l’on puisse retenir
finding-too-few-days = intervalles retenus sur { counted-days }, la norme en exige { $least }
finding-too-few-days-own = intervalles retenus sur { counted-days }, la limite propre à la campagne en demande { $least }
finding-too-few-days-remedy = des intervalles retenus sur { missing-days }
finding-no-rating = aucune droite ne peut être ajustée : il faut trois intervalles retenus avec irradiance, à des écarts de température différents
finding-no-rating-remedy = davantage d’intervalles que l’on puisse retenir, de la température ambiante jusque près de l’ébullition
# { $shortest }, { $longest }: "9", "11".
finding-no-rating-remedy-intervals = relever l’eau toutes les { $shortest } à { $longest } minutes, ou toutes les une, deux ou cinq, jusque près de l’ébullition
finding-no-rating-remedy-irradiance = mesurer l’irradiance ; sans elle, la puissance ne peut pas être normalisée
finding-r-squared-low = R² vaut { $r_squared }, moins que { $least } ; la norme demande seulement une remarque ; ce rapport ne déclare pas la conformité
finding-r-squared-low-own = R² vaut { $r_squared }, moins que la limite propre à la campagne de { $least }
finding-r-squared-low-remedy = une orientation plus régulière, un ciel plus clair et moins de vent ; un capteur qui ne touche pas la marmite
finding-r-squared-low-remedy-resolution = un thermomètre de l’eau plus fin : sa résolution fait la plus grande part de la dispersion
# D’une droite à laquelle ses points s’ajustent bien.
finding-r-squared-low-remedy-flat = R² est bas parce que la puissance ne baisse guère avec la température, non à cause de la dispersion ; juger le chiffre par son ± ; une plage plus large de température de l’eau élève R²
finding-line-not-falling = la puissance ne baisse pas quand l’eau devient plus chaude, bien qu’une eau plus chaude perde plus de chaleur
finding-line-not-falling-remedy = vérifier que la température de l’eau est bien celle de l’eau, et couvrir une plage de températures plus large
finding-no-useful-heat = la droite indique { $power } W à { $difference } : là, l’eau perd de la chaleur
finding-no-useful-heat-remedy = vérifier que les relevés sont ceux d’une eau que l’on chauffe, cuiseur orienté
finding-extrapolated = { $difference } se trouve hors des écarts de température observés, de { $observed }
finding-extrapolated-remedy = des intervalles retenus de part et d’autre de { $difference }
# { $runs }: a list of finding-load-off-run.
finding-load-off = la charge s’écarte de plus de { $tolerance } % de { $load } dans { $runs }
# As in English
finding-load-off-run = { $run } ({ $load })
finding-load-off-remedy = peser { $load } d’eau par m² de surface de captation, ou corriger cette surface
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = le vent n’a pas été mesuré dans { $runs }
finding-wind-not-measured-remedy = mesurer le vent à côté du cuiseur, à sa hauteur
finding-wind-estimated = le vent a été estimé à vue dans { $runs }, à un degré près de l’échelle de Beaufort
finding-irradiance-estimated = l’irradiance n’a pas été mesurée près du cuiseur dans le plan normal au rayonnement direct, mais estimée { $way }
finding-irradiance-estimated-remedy = mesurer l’irradiance à côté du cuiseur, avec un capteur tourné vers le soleil
finding-irradiance-missing = l’irradiance n’a pas été mesurée dans { $runs }, dont les intervalles ne peuvent pas être normalisés et ne comptent pas pour la droite
finding-irradiance-missing-remedy = mesurer l’irradiance dans le plan normal au rayonnement direct
finding-irradiance-horizontal = l’irradiance a été mesurée dans le plan horizontal ; la norme exige le plan normal au rayonnement direct, dans lequel elle est d’ordinaire plus élevée ; le résultat est donc probablement trop élevé
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = monter le capteur face au soleil comme le cuiseur ; d’ici là, le fichier de campagne peut demander que ses relevés soient ramenés à ce plan, une estimation
finding-irradiance-plane-not-stated = le plan du capteur d’irradiance n’est pas indiqué ; la norme exige le plan normal au rayonnement direct, qui est supposé
# plane = "normal" et [instruments.irradiance] sont des parties du fichier de campagne et restent telles quelles.
finding-irradiance-plane-not-stated-remedy = indiquer sous [instruments.irradiance] comment le capteur était tenu : plane = "normal" s’il était tourné vers le soleil, plane = "horizontal" s’il était à plat
finding-impossible-gain = dans { counted-used }, l’eau a gagné plus de chaleur que le rayonnement solaire intercepté ; dans le premier, elle a pris { $power } W sur { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-gain-estimated = dans { counted-used }, l’eau a gagné plus de chaleur que le rayonnement solaire intercepté, au-delà de l’incertitude de l’irradiance estimée (± { $percent } %) ; dans le premier, elle a pris { $power } W sur { $sunlight } W
finding-impossible-gain-remedy = vérifier la masse d’eau, la surface de captation, et les unités de température et d’irradiance
finding-impossible-rating = le résultat de { $power } W dépasse le rayonnement solaire reçu par la surface de captation sous { $irradiance } W/m², { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-rating-estimated = le résultat de { $power } W dépasse le rayonnement solaire reçu par la surface de captation sous { $irradiance } W/m², { $sunlight } W, au-delà de l’incertitude de l’irradiance estimée (± { $percent } %)
finding-impossible-rating-remedy = vérifier les unités de température, la surface de captation et la charge d’eau
finding-gain-beyond = dans { counted-used }, l’eau a gagné plus de chaleur que l’irradiance n’en explique ; dans le premier, elle a pris { $power } W sur { $sunlight } W
finding-gain-beyond-remedy = vérifier la masse d’eau, la surface de captation et les unités, et mesurer l’irradiance avec un capteur face au soleil
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = limites propres plus larges qu’une exigence : { $limits }
finding-recommendation-relaxed = limites propres plus larges qu’une recommandation : { $limits }
finding-limit-tightened = limites propres plus strictes que la norme : { $limits }
finding-guard = une bande de garde de l’incertitude élargie à chaque limite (norme : aucune)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (norme : { $practice })
# As in English
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = revenir aux limites de la norme : supprimer celles-ci sous [limits] dans le fichier de campagne
finding-excluded-by-tester = l’opérateur a exclu { counted-intervals }
finding-excluded-by-tester-remedy = rien à faire, si le motif enregistré est fondé

## What was tested

section-tested = Objet de l’essai
# As in English
page-instruments = Instruments
page-instruments-quantity = grandeur
# As in English
page-instruments-instrument = instrument
page-instruments-uncertainty = incertitude

## Conditions

# As in English
section-conditions = Conditions
# Headers of the table.
# As in English
page-conditions-condition = condition
page-conditions-limit = limite
page-conditions-short-name = nom court
page-conditions-standing = statut
page-conditions-observed = observé
page-conditions-set-aside = écartés
# What is limited. Also within findings.
limit-water-above-ambient = eau au-dessus de l’ambiante moyenne
limit-water-below-boiling = eau en dessous du point d’ébullition local
limit-water-temperature = température de l’eau
limit-ambient = température ambiante moyenne
limit-irradiance-lowest = irradiance la plus basse de l’intervalle
limit-irradiance-highest = irradiance la plus élevée de l’intervalle
limit-irradiance-change = variation de l’irradiance dans l’intervalle
limit-wind-mean = vent moyen
limit-wind-gust = vent soutenu plus de dix minutes (écarte la série)
limit-solar-time-start = heure solaire au début
limit-solar-time-end = heure solaire à la fin
limit-solar-time = heure solaire
limit-interval = durée d’un intervalle
limit-load = eau par m² de surface de captation
limit-load-tolerance = écart admis de la charge
limit-intervals = intervalles retenus
limit-days = jours avec des intervalles retenus
limit-r-squared = R² de la droite
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = exigence
standing-recommendation = recommandation
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = propre (exigence)
standing-own-recommendation = propre (recommandation)
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = pas de droite
# Of gusts.
conditions-never = jamais
conditions-gust = pendant { $time } au plus
# Intervals were formed, and none of them is used.
conditions-none-used = aucun retenu
conditions-no-interval = aucun intervalle
conditions-not-measured = non mesuré
conditions-observed = Observé : de la valeur la plus basse à la plus haute, sur tous les intervalles. Un intervalle qui ne remplit pas plusieurs conditions est compté pour chacune. Noms courts : comme dans les figures et dans le tableau des intervalles.
conditions-r-squared = R² sous sa limite : la norme demande seulement une remarque ; ce rapport ne déclare pas la conformité.
# "Own" as in standing-own-requirement.
conditions-own = Les limites marquées « propre » sont celles de la campagne et s’écartent de la norme.
conditions-guard = Une bande de garde est en vigueur : une valeur ne compte comme respectant une limite que si elle la respecte avec toute son incertitude, selon la règle de décision à la fin.

## Runs

section-runs = Séries de mesures
# Of more runs than are all shown.
runs-shown = Il y a { $runs } séries, plus de { $most } : { $shown } sont montrées, une sur { $step }, la dernière et celles des intervalles influents qui sont nommés. Les autres figurent ci-dessous par leur nom ; la droite repose sur toutes, et tous leurs intervalles sont dans { $file }. « runs_shown = "all" » sous [report] montre chaque série.
page-runs-others = Séries sans figure
runs-axes = Toutes les séries ont les mêmes axes.
runs-axes-but-clock = Toutes les séries ont les mêmes axes, sauf l’heure.
runs-axes-own-start = Toutes les séries ont les mêmes axes ; l’axe des heures commence avec chaque série et a partout la même longueur.
runs-shaded = Fond ombré : intervalles retenus. Pointillés : limites.
runs-wind = Vent : relevés en trait fin, moyennes des intervalles en gras.
runs-no-wind = Le vent n’a pas été mesuré.
runs-no-irradiance = L’irradiance n’a pas été mesurée.
runs-lanes = En bas : intervalles non retenus, par motif, avec leur nombre.
runs-aimed = Triangles : réorienté, d’après les notes du fichier.
runs-predicted = REQM : écart quadratique moyen entre température de l’eau prédite et mesurée.
run-title = Série { $number }, { $date }
run-used = { $used } sur { $of } retenus
run-load = { $water } d’eau, { $load }
run-aimed = réorienté toutes les { $minutes } min
run-predicted = REQM { $rms } K
run-tester = Opérateur : { $note }
run-hole = Pas d’intervalle de { $from } à { $to } : il n’y a pas là deux relevés de l’eau séparés de { $shortest } à { $longest } minutes.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Tracés selon l’heure locale de { $from } à { $to } : eau entre { $coldest } et { $hottest } degrés Celsius, avec la température ambiante ; { $irradiance } ; { $wind }. Retenus et ombrés : { $used } sur { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Écartés : { $reasons }.
run-alt-none-aside = Rien n’est écarté.
# As in English
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = Les températures de l’eau prédites et mesurées diffèrent de { $rms } kelvins, en moyenne quadratique.
run-alt-not-predicted = La droite ne prédit rien pour cette série.
run-alt-aimed = Réorienté { $times } fois d’après les notes du fichier.
run-alt-aimed-once = Réorienté une fois d’après les notes du fichier.
run-alt-irradiance = irradiance entre { $lowest } et { $highest } watts par mètre carré
run-alt-no-irradiance = irradiance non mesurée
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
# As in English
page-intervals-irradiance = irradiance, W/m²
page-intervals-range = min.–max.
page-intervals-wind = vent, m/s
# As in English
page-intervals-power = P, W
# As in English
page-intervals-difference = Td, K
# As in English
page-intervals-standardised = Ps, W
interval-no-irradiance = non normalisé : pas d’irradiance
page-intervals-continued = suite
intervals-shown = Intervalles des { $shown } séries montrées ; les { $intervals } sont tous dans { $file }.
intervals-note = Eau : au début et à la fin de l’intervalle. Irradiance : moyenne, puis du relevé le plus bas au plus haut. P : puissance de cuisson. Td : température moyenne de l’eau moins température ambiante moyenne. Ps : P normalisée à 700 W/m².
intervals-dots = Un point : l’intervalle n’est pas retenu, pour ce motif.
intervals-us = 1 K, comme écart de température, vaut { $fahrenheit } °F.
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = l’eau était encore trop proche de l’ambiante
reason-water-above-window = l’eau était trop proche de l’ébullition
reason-ambient-out-of-range = l’air était trop froid ou trop chaud
reason-irradiance-low = le soleil était trop faible
reason-irradiance-high = le soleil était trop fort
reason-irradiance-unsteady = le soleil était instable
reason-wind-high = le vent était trop fort
reason-outside-solar-window = l’heure solaire était trop matinale ou trop tardive
reason-reading-gap = des relevés manquaient
reason-excluded-by-tester = l’opérateur a exclu cette période
reason-not-cloudless = l’opérateur n’indique pas que le ciel était sans nuages
lane-water-below-window = froide
lane-water-above-window = chaude
# As in English
lane-ambient-out-of-range = air
lane-irradiance-low = faible
lane-irradiance-high = fort
lane-irradiance-unsteady = instable
lane-wind-high = vent
lane-outside-solar-window = heure
lane-reading-gap = trou
lane-excluded-by-tester = exclu
lane-not-cloudless = ciel
lane-not-normalised = sans irrad.

## Regression and uncertainty

section-regression = Régression et incertitude
regression-none = Aucune droite ne peut être ajustée : il faut au moins trois intervalles retenus avec irradiance, à des écarts de température différents.
regression-method = Moindres carrés ordinaires de Ps sur Td pour les intervalles retenus de toutes les séries, à poids égal. P = m·c·(T2 − T1)/Δt avec c = 4186 J/(kg K) et la durée réelle ; Ps = P·700/G avec l’irradiance moyenne G de l’intervalle ; Td = température moyenne de l’eau moins température ambiante moyenne. Les moyennes sont pondérées par le temps.
# Labels, and what stands beside them.
regression-line = droite
regression-intercept = ordonnée à l’origine a
regression-watts = { $value } W, erreur type { $error } W
regression-slope = pente b
regression-watts-per-kelvin = { $value } W/K, erreur type { $error } W/K
regression-residual = résidus
regression-residual-text = écart-type { $deviation } W
# As in English
regression-points = points
regression-points-text = { counted-intervals } sur { counted-days }, { counted-freedom }
residuals-caption = Résidus des intervalles retenus, par jour : selon l’écart de température, selon l’heure, et selon les quantiles d’une loi normale. Tirets : deux fois leur écart-type ; à droite, la loi normale elle-même.
# Read out to those who do not see the figure.
residuals-alt = Résidus autour de la droite en watts, selon l’écart de température en kelvins et selon l’heure locale, avec une marque pour chaque jour ; écart-type { $deviation } watts ; { $outside ->
    [one] { $outside } point sur { $points } est à plus de deux fois cette valeur de la droite.
   *[other] { $outside } points sur { $points } sont à plus de deux fois cette valeur de la droite.
}
page-scatter = Effets des jours, autocorrélation, points influents
page-uncertainty = Incertitude de Ps(50)
# Headers of a table of six columns.
# As in English
page-uncertainty-source = source
page-uncertainty-of-source = base
# Type A or B of the GUM.
# As in English
page-uncertainty-type = type
page-uncertainty-sensitivity = sensibilité
# As in English
page-uncertainty-of-rating = u, W
# As in English
page-uncertainty-factor = k
page-uncertainty-part = part de ±²
section-heat-balance = Bilan thermique
page-balance-quantity = grandeur
balance-what = L’eau reçoit ce que le cuiseur gagne du soleil moins ce qu’il perd dans l’air : P = g·G − u·Td, avec l’irradiance G et l’écart de température Td. La puissance peut donc être calculée à toute irradiance. Le résultat de la norme met les pertes à l’échelle de l’irradiance ; ce bilan ne le fait pas.
# Above a column of values, where days are not in the ±, so that it is no 95 % range.
balance-spread = ± pour 95 % : dispersion, jours, instruments
balance-spread-one-day = ± sans les jours, pas à 95 % : dispersion, instruments
balance-gain = gain solaire, g
# As in English
balance-gain-text = { $value } m²
balance-loss = perte dans l’air, u
# As in English
balance-loss-text = { $value } W/K
balance-power = puissance à 700 W/m² et 50 K, 700·g − 50·u
# As in English
balance-power-text = { $value } W
balance-ratio = rapport optothermique, g/u
# As in English
balance-ratio-text = { $value } K m²/W
balance-ratio-none = non donné : la perte peut être nulle
acceptance = demi-angle d’acceptance
acceptance-text = { $value }° (de { $lower }° à { $upper }°, 95 %)
acceptance-none = non démontré
acceptance-rests-on = Le demi-angle d’acceptance est l’écart que le soleil peut prendre par rapport à l’axe avant qu’un dixième du gain soit perdu. Il est estimé d’après la baisse de la puissance entre les orientations notées dans le fichier : { $stretches } tronçons, avec le soleil jusqu’à { $angle }° hors de l’axe. Sa plage comprend la dispersion, les formes possibles de la baisse et la précision des heures notées (pratique courante).
acceptance-few = Pas de demi-angle d’acceptance : { $teeth } tronçons entre orientations notées conviennent, et il en faut { $least }, chacun avec au moins { $readings } relevés de l’eau et { $angle }° de déplacement du soleil.
acceptance-few-remedy = Notez chaque orientation dans le fichier, relevez l’eau toutes les cinq minutes ou plus souvent, et laissez le soleil se déplacer de quelques degrés avant de réorienter.
acceptance-not-shown = Aucun demi-angle d’acceptance n’est démontré : sur { $teeth } tronçons entre orientations, avec le soleil jusqu’à { $angle }° hors de l’axe, le gain ne baisse pas plus que la dispersion ne l’explique.
acceptance-not-shown-remedy = Laissez le cuiseur immobile pendant une heure, deux fois ou plus, avec de l’eau à température stable et sous un ciel dégagé : le soleil se déplace d’environ 15° pendant ce temps. Restez à côté : le foyer quitte la marmite et peut brûler ou éblouir qui il atteint, et enflammer ce qu’il atteint.
# As in English
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = Il repose sur { counted-intervals } aux relevés fiables ({ counted-days }), à { $mean } W/m² en moyenne ({ $range } W/m²). Les limites de météo et d’heure ne s’appliquent pas ici ; la plage de température de l’eau, les exclusions de l’opérateur et, là où l’irradiance est estimée, le ciel sans nuages s’appliquent.
balance-rests-on-steps = Il repose sur { $steps } pas entre relevés de l’eau ({ counted-days }), à { $mean } W/m² en moyenne ({ $range } W/m²). Les limites de météo et d’heure ne s’appliquent pas ici ; la plage de température de l’eau, les exclusions de l’opérateur et, là où l’irradiance est estimée, le ciel sans nuages s’appliquent.
balance-counts-vessels = Ici, le gain, la perte et la puissance comprennent la capacité thermique des récipients, { $heat } J/K : { $basis }. Le résultat et la section sur la cuisson ne valent que pour l’eau.
balance-scaling-adds = Avec cette perte, la mise à l’échelle proportionnelle du résultat, de { $mean } W/m² à 700 W/m², ajoute { $power } W à Ps(50).
balance-scaling-takes = Avec cette perte, la mise à l’échelle proportionnelle du résultat, de { $mean } W/m² à 700 W/m², retire { $power } W à Ps(50).
balance-caption = La bande est celle du bilan d’incertitude ; là où Monte-Carlo va plus loin, le tableau donne la borne la plus large.
balance-caption-one-day = La bande ne contient pas la variation d’un jour à l’autre et n’est donc pas à 95 % ; c’est celle du bilan d’incertitude ; là où Monte-Carlo va plus loin, le tableau donne la borne la plus large.
# Behind a caption.
balance-beyond = Intervalles au-delà des bords : { $count }.
# Read out to those who do not see the figure.
balance-alt = Nuage de points de la puissance sur l’irradiance, en mètres carrés, selon l’écart de température sur l’irradiance, de { $lowest } à { $highest } kelvin mètre carré par watt. Points : { counted-intervals } auxquels la droite est ajustée ; croix : { $others } autres. La droite part de { $gain } mètres carrés, sans écart de température ; la perte est de { $loss } watts par kelvin.
# Axes and key of the figure: there is little room.
balance-axis-difference = écart de température sur irradiance, Td/G, K m²/W
balance-axis-power = puissance sur irradiance, P/G, m²
balance-key-used = ajustés ({ $count })
balance-key-others = autres ({ $count })
balance-key-line = g − u·Td/G, bande à 95 % avec instruments
balance-key-line-one-day = g − u·Td/G, bande sans les jours, avec instruments
balance-none-irradiance = Le gain et la perte ne peuvent pas être ajustés : l’irradiance n’a pas été mesurée.
balance-none-few = Le gain et la perte ne peuvent pas être ajustés : il faut au moins trois intervalles aux relevés fiables ; trouvés : { $intervals }.
balance-none-alike = Le gain et la perte ne peuvent pas être séparés : l’écart de température et l’irradiance ont gardé presque le même rapport dans tous les intervalles.
balance-source = Moindres carrés ordinaires de P sur G et Td sans ordonnée à l’origine, chaque intervalle à poids égal. D’après Funk et Larson 1998 (Solar Energy 62, 63–68) ; ce n’est pas un essai selon ISO 9806. Rapport optothermique : Lahkar, Bhamu et Samdarshi 2012 (Applied Energy 99, 491–495).

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
page-fuel = Combustible remplacé
page-dry = Récipient à sec
# As in English
page-dry-date = date
page-dry-plateau = palier
# As in English
page-dry-air = air
# As in English
page-dry-irradiance = irradiance
page-dry-difference = écart par W/m²
page-dry-notes = remarques
# As in English
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimée
# As in English
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = Température stable la plus élevée du récipient vide et sombre au-dessus de l’ambiante, divisée par l’irradiance ; ± pour 95 %, un thermomètre de four à ± 10 K près là où aucune incertitude n’est indiquée. Elle met les pertes de chaleur en regard du soleil et n’est pas une puissance de cuisson. Mullick, Kandpal et Saxena 1987 emploient ce rapport pour les cuiseurs boîtes ; pour d’autres cuiseurs, il ne sert qu’à comparer des cuiseurs semblables. Un récipient vide peut rougir, se fendre ou perdre son revêtement : ne le laissez jamais sans surveillance.
page-assumed = Hypothèses

## Cautions

section-cautions = Mises en garde

## Provenance

section-provenance = Écarts, remarques et provenance
page-deviations = Écarts à la norme
page-tester-notes = Remarques de l’opérateur
page-notices = Remarques sur les fichiers de mesures
page-logs = Lecture des fichiers de mesures
page-made-with = Réalisé avec
page-sources = Ce qui n’a pas été vérifié
# SHA-256: digits that change when a file changes.
page-inputs = Fichiers, avec leur SHA-256
# A photo among the inputs.
input-photo = { $file }, telle que dans ce rapport
# { $file }: its name, or input-photo.
input-outside = { $file }, hors du dossier de la campagne
# Un fichier de mesures trop long pour être joint ; { $file } : son nom, ou input-outside.
input-beside = { $file }, non pas dans ce rapport mais à côté ({ $bytes } octets)
inputs-beside = { $count ->
    [one] { $count } fichier de mesures de plus de { $limit } Mo n’est pas dans ce PDF. Gardez-le avec le PDF, dans le même dossier et sous son nom : « simmerline verify » en a besoin, et ne l’accepte que si son SHA-256 est celui imprimé ici. « --logs DIR » indique un autre dossier. « report --carry-all » met un tel fichier dans le PDF.
   *[other] { $count } fichiers de mesures de plus de { $limit } Mo ne sont pas dans ce PDF. Gardez-les avec le PDF, dans le même dossier et sous leurs noms : « simmerline verify » en a besoin, et n’accepte chacun que si son SHA-256 est celui imprimé ici. « --logs DIR » indique un autre dossier. « report --carry-all » met de tels fichiers dans le PDF.
}

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = sans indication

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Cuiseur boîte
cooker-panel = Cuiseur à panneaux
cooker-concentrating = Cuiseur à concentration
cooker-tube = Cuiseur à tube
aperture-circle = cercle, { $diameter } de diamètre
aperture-rectangle = rectangle, { $width } sur { $height }
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = polygone régulier, { $sides } côtés, { $across } entre sommets
aperture-outline = contour de { $points } points
# { $shape }: one of the four above. The beam is the light that comes straight from the sun.
aperture-off-normal = { $shape }, rayonnement direct à { $degrees }° de sa normale

## Ways to estimate irradiance
#
# Each goes on after "irradiance estimated", and also stands alone after a comma.

estimated-clear-sky = par un modèle de ciel clair (Ineichen et Perez 2002)
estimated-from-horizontal = d’après un capteur posé à plat (Erbs, Klein et Duffie 1982)
estimated-station = d’après le fichier de mesures d’une station voisine
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
basis-within-kelvin = à ± { $limit } près
basis-within-kelvin-read = à ± { $limit } près, lu à { $step }
basis-within-seconds = à ± { $limit } s près

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
# As in English
subtitle-cooker = { $cooker }, { $area }
# As in English
subtitle-site = { $site }, { $elevation }
subtitle-tester = opérateur : { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = du { $first } au { $last }
# "28 September to 3 October 2026".
dates-of-a-year = du { $day } { $month } au { $last }
dates = du { $first } au { $last }

## What was tested
#
# Labels stand at the left in a column of about 18 letters; longer ones break.

tested-photo = Le cuiseur soumis à l’essai.
# Read out to those who do not see it.
tested-photo-alt = Photographie du cuiseur { $cooker }
tested-cooker = Cuiseur
tested-name = nom
# As in English
tested-identification = identification
# As in English
tested-type = type
tested-area = surface de captation
# As in English
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
tested-per-area = par surface de captation
tested-per-area-text = { $load } (norme : { $practice })
tested-per-area-own = { $load } (limite propre : { $own })
tested-vessels = récipients
tested-environment = Environnement des intervalles retenus
environment-ambient = air ambiant
# As in English
environment-irradiance = irradiance
environment-wind = vent
environment-numbers = moy. { $mean }, relevés { $range }
environment-none = aucun intervalle retenu
# As in English
tested-site = Site
tested-place = lieu des essais
# As in English
tested-position = position
# As in English
tested-position-text = { $latitude }, { $longitude }, { $elevation }
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
tested-test = Essai
tested-method = méthode
# The title of the standard stands in English.
# As in English
tested-method-text = ASAE { $procedure }, testing and reporting solar cooker performance
# As in English
tested-dates = dates
tested-dates-text = { $dates }, { $runs ->
        [one] { $runs } série
       *[other] { $runs } séries
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
# As in English
tested-client = client
tested-contact = contact du client
tested-client-data = fourni par client
tested-sampling = échantillonnage
tested-not-sampled = sans indication ; pris tel que reçu, non échantillonné
tested-others = résultats externes
tested-others-station = irradiance, du fichier de mesures d’une station voisine
tested-stated-note = Les données sur le cuiseur, la charge, le site, le laboratoire et le client sont celles de l’opérateur et n’ont pas été vérifiées ; leurs erreurs, et celles des incertitudes indiquées, se reportent sur les résultats. Les résultats valent pour le cuiseur tel que reçu.

## What was tested: instruments

tested-water-temperature = température de l’eau
tested-ambient-temperature = température ambiante
tested-wind-speed = vitesse du vent
tested-water-mass = masse d’eau
tested-irradiance-estimated = irradiance, estimée
tested-irradiance-normal = irradiance, plan normal au rayonnement direct
tested-irradiance-horizontal = irradiance, plan horizontal
tested-irradiance-plane-assumed = irradiance, plan non indiqué, supposé normal au rayonnement direct
instrument-not-measured = non mesuré
# Beside an uncertainty that may be stated or not.
instrument-not-described = non décrit
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
instrument-by-eye-uncertainty = la plage d’un degré, par exemple { $speeds }
uncertainty-percent = { $percent } % du relevé
# As in English
# As in English
# As in English
uncertainty-seconds = { $seconds } s
tested-instruments-note = Incertitudes-types (k = 1), telles qu’indiquées par l’opérateur ; « selon sa classe » : limites de la classe ; la section { $section } dit ce qui est supposé là où ni l’une ni l’autre n’est indiquée. La norme demande le capteur de l’eau au centre, à 10 mm au-dessus du fond du récipient, le vent mesuré à côté du cuiseur, à sa hauteur, et une charge répartie également entre les récipients ; rien de cela n’a été vérifié.

## Regression and uncertainty: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = composée
budget-root = racine de la somme des carrés
# The rating with its expanded uncertainty.
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (pas à 95 %)
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
budget-per-percent = W par %
budget-per-kelvin = W par K
budget-percent = { $share } %
budget-tiny = autres, chacun sous { $share } %
budget-offset-of = { $known } (part de décalage)
budget-scale = { $percent } % de l’écart à { $about } (part d’échelle)
# { $uncertainty }: "0.5 K" or "3 % of the reading".
budget-stated = { $uncertainty }, indiquée
# { $class }: one of the messages that begin with class-; { $basis }: one that begins with basis-.
budget-class = { $class } : { $basis }
budget-assumed = supposée, { $class } : { $basis }
# What is in error, in the same table, and in the sentences below.
# As in English
error-irradiance = irradiance
error-clear-sky = irradiance, estimée
# From the horizontal plane to the plane normal to the beam.
error-conversion = irradiance, ramenée face au soleil
# A weather station a few kilometres away.
error-distance = irradiance, à la station
error-water-temperature = température de l’eau, décalage
error-water-scale = température de l’eau, échelle
error-ambient-temperature = température ambiante, décalage
error-ambient-scale = température ambiante, échelle
error-water-mass = masse d’eau
error-specific-heat = chaleur massique de l’eau
error-clock-rate = temps
# What their uncertainty follows from, where it is not the tester's to state.
known-clear-sky = { $percent } % : modèle de ciel clair 5 %, le reste par un trouble à ± 2 près
known-conversion = conversion { $percent } %, d’un rayonnement direct connu à un cinquième près
known-distance = { $percent } % pour une station voisine
known-specific-heat = 4186 J/(kg K) à ± { $percent } % près
known-clock-rate = marche de l’horloge à ± { $percent } % près
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = pratique courante
source-wmo-8 = WMO-No. 8, totaux horaires, pour les classes d’ISO 9060:1990 (étalon secondaire, première, seconde) auxquelles A, B, C de 2018 font suite
source-iec-60584 = IEC 60584-1:2013, tolérance jusqu’à 100 °C
source-iec-60751 = IEC 60751, tolérance à 100 °C
source-clear-sky = Ineichen et Perez 2002 ; Reno, Hansen et Stein 2012 (SAND2012-2389) ; trouble selon la pratique courante
source-conversion = Erbs, Klein et Duffie 1982 ; Gueymard et Ruiz-Arias 2016
source-specific-heat = IAPWS-IF97, 10 °C à 95 °C

## Regression and uncertainty: what the budget comes to

# As in English
budget-result = Ps(50) = { $rating }
budget-result-not-valid = Non valide (page un) : le bilan ci-dessous est celui des seuls relevés, qui se contredisent.
budget-rule = Intervalle : racine de la somme des (k·u)². Là où un contrôle de Monte-Carlo (JCGM 101:2008) diffère de plus que sa tolérance, chaque borne est la plus éloignée des deux, et le ± est le plus long côté. JCGM 100:2008, G.4, prend un seul k pour toutes les lignes ; avec peu de jours, c’était trop étroit dans les simulations.
budget-note-columns = k : t de Student pour la dispersion et les jours, 1,96 pour les instruments. Part : (k·u)² de la ligne sur la somme de toutes les lignes ; négative là où une erreur compense une partie d’une autre. Type A : par la statistique des intervalles ; B : autrement.
budget-note-common = Les erreurs des instruments sont communes à tous les intervalles. Celles de l’irradiance, de la masse, de la chaleur massique et du temps changent l’échelle de toute la droite et n’apparaissent jamais dans sa dispersion ; une erreur de température constante s’annule dans la montée et ne fait que décaler Td, une erreur d’échelle fait les deux.
budget-note-thermometer = L’incertitude u d’un thermomètre est supposée valoir indépendamment à { $cold } et à { $hot } (pratique courante) : un décalage de u/√2, et une erreur d’échelle autour de { $about } qui vaut u/√2 à chaque bout. L’eau et l’air lus par un même instrument partagent les deux.
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = Ce que l’opérateur n’a pas indiqué vient de : { $sources }. Des limites connues sans autre précision sont prises comme rectangulaires, u = limite/√3 (JCGM 100:2008, 4.3.7).
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = Pour { $quantities }, le fichier de campagne n’indique ni incertitude ni classe ; la classe la plus prudente est donc supposée. Indiquer ce qui a été utilisé réduira très probablement l’incertitude.
budget-note-resolution = Dans la dispersion de { $scatter } W par intervalle, la résolution du thermomètre compte pour { $step } W et l’instant de lecture pour { $moment } W, en somme quadratique ; les deux en font partie.
budget-note-resolution-most = Dans la dispersion de { $scatter } W par intervalle, la résolution du thermomètre compte pour { $step } W et l’instant de lecture pour { $moment } W, en somme quadratique ; les deux en font partie. Deux intervalles voisins partagent un relevé, la plus grande part s’annule donc au long d’une série ; le reste est l’essentiel de ce que la dispersion et les jours apportent au résultat, et un thermomètre plus fin le réduirait.
budget-note-resolution-beyond = La résolution du thermomètre donnerait à elle seule une dispersion de { $step } W par intervalle, et l’instant de lecture { $moment } W : ensemble plus que les { $scatter } W observés. Le thermomètre a donc été lu par pas plus fins que ceux indiqués ou supposés, ou ses erreurs d’arrondi se sont annulées par hasard. Indiquer le pas de lecture (resolution_k) peut réduire l’incertitude.

## Regression and uncertainty: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = Pas de contrôle de Monte-Carlo : l’irradiance est si incertaine que certains tirages tombent à zéro ou en dessous. L’intervalle n’est alors guère qu’une conjecture.
drawn-holds = Monte-Carlo, { $trials } tirages des mêmes erreurs à travers relevés, puissance, régression et droite : 95 % d’entre eux de { $lower } à { $upper } W, dans la tolérance de { $tolerance } W. L’intervalle est celui du bilan.
drawn-apart = Monte-Carlo, { $trials } tirages des mêmes erreurs à travers relevés, puissance, régression et droite : 95 % d’entre eux de { $lower } à { $upper } W. C’est jusqu’à { $apart } W d’écart avec les { $from } à { $to } W du bilan, au-delà de la tolérance de { $tolerance } W.
drawn-because-divided = Cause principale : la puissance est divisée par une irradiance dont l’incertitude-type est de { $percent } % ; une erreur d’un côté déplace donc le résultat plus que la même erreur de l’autre.
drawn-because-curved = Cause principale : les erreurs autres que celle de l’irradiance n’agissent pas en proportion.
drawn-because-limits = Cause principale : les erreurs connues par leurs seules limites n’ont pas de queues, alors que le bilan leur en prête.
drawn-because-few = Cause principale : avec { $freedom ->
    [one] { $freedom } degré
   *[other] { $freedom } degrés
} de liberté, le t de Student et une loi normale ne se combinent pas exactement comme une racine de somme de carrés.
drawn-because-unsettled = Cause principale : les tirages eux-mêmes ; avec { $freedom ->
    [one] { $freedom } degré
   *[other] { $freedom } degrés
} de liberté, leurs bornes se stabilisent lentement.
drawn-interval = L’intervalle est donc de { $from } à { $to } W.
drawn-settled-to = Les bornes de l’intervalle de Monte-Carlo sont connues à ± { $within } W.

## Regression and uncertainty: what more data would bring

outlook-at-best = Des essais supplémentaires avec ces instruments ne réduiront pas le ± au-dessous de { $least } W.
outlook-reached = L’objectif de ± { $target } W est atteint.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = L’objectif de ± { $target } W demande { $more }, en supposant la dispersion vue jusqu’ici.
outlook-more-one-day = L’objectif de ± { $target } W demande { $more }, en supposant la dispersion vue jusqu’ici et que les jours ne diffèrent pas.
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
outlook-out-of-reach = L’objectif de ± { $target } W ne peut pas être atteint avec plus d’intervalles : les instruments seuls laissent ± { $least } W. { $heaviest }
heaviest-irradiance = L’irradiance pèse le plus.
heaviest-clear-sky = L’irradiance estimée pèse le plus.
heaviest-conversion = L’irradiance ramenée face au soleil pèse le plus.
heaviest-distance = L’irradiance à la station pèse le plus.
heaviest-water-temperature = La température de l’eau pèse le plus.
heaviest-water-scale = L’échelle du thermomètre de l’eau pèse le plus.
heaviest-ambient-temperature = La température ambiante pèse le plus.
heaviest-ambient-scale = L’échelle du thermomètre de l’air ambiant pèse le plus.
heaviest-water-mass = La masse d’eau pèse le plus.
heaviest-specific-heat = La chaleur massique de l’eau pèse le plus.
heaviest-clock-rate = Le temps pèse le plus.
outlook-too-far = L’objectif de ± { $target } W demanderait plus d’intervalles qu’on n’en mesure en pratique, en supposant la dispersion vue jusqu’ici.
outlook-too-far-one-day = L’objectif de ± { $target } W demanderait plus d’intervalles qu’on n’en mesure en pratique, en supposant la dispersion vue jusqu’ici et que les jours ne diffèrent pas.

## Page one, and regression and uncertainty: what limits the number most

limits-most-few-days = La plus grande part du ± vient de ce qu’il n’y a que { $days ->
    [one] { $days } jour
   *[other] { $days } jours
} ({ $percent } % de son carré).
limits-most-days = La plus grande part du ± est la dispersion d’un jour à l’autre ({ $percent } % de son carré).
limits-most-within-days = La plus grande part du ± est la dispersion au sein des jours et entre eux ({ $percent } % de son carré).
limits-resolution = La plus grande part de la dispersion entre intervalles vient de la résolution du thermomètre de l’eau.
limits-most-scatter = La plus grande part du ± est la dispersion des intervalles ({ $percent } % de son carré).
limits-most-resolution = La plus grande part du ± est la dispersion ({ $percent } % de son carré), due surtout à la résolution du thermomètre de l’eau.
limits-most-irradiance = La plus grande part du ± est l’incertitude de l’irradiance ({ $percent } % de son carré).
limits-most-estimated = La plus grande part du ± est l’estimation de l’irradiance ({ $percent } % de son carré).
limits-most-water = La plus grande part du ± est l’incertitude du thermomètre de l’eau ({ $percent } % de son carré).
limits-most-ambient = La plus grande part du ± est l’incertitude du thermomètre de l’air ambiant ({ $percent } % de son carré).
limits-most-mass = La plus grande part du ± est l’incertitude de la masse d’eau ({ $percent } % de son carré).
limits-most-other = La plus grande part du ± vient de la chaleur massique de l’eau et de l’horloge ({ $percent } % de son carré).

## Regression and uncertainty: days, neighbours and single intervals

days-one = Tous les intervalles retenus sont d’un seul jour : on ne sait pas combien les jours diffèrent, et cela n’est pas dans l’incertitude. Un autre jour peut donner un résultat hors de la plage indiquée.
days-too-few-intervals = Trop peu d’intervalles pour distinguer les jours de la dispersion ; la différence entre les jours n’est pas dans l’incertitude.
days-no-scatter = Les intervalles se trouvent sur les droites de leurs jours sans aucune dispersion, les jours ne peuvent donc pas être testés.
days-test = F({ $between } ; { $within }) = { $statistic }, { $p }
# { $numbers }: days-numbers. One of days-left-out and days-left-out-two follows
# after the first three.
days-differ = Les jours diffèrent de plus que n’explique la dispersion au sein des jours ({ $numbers }).
days-not-shown = Les jours ne diffèrent pas de plus que n’explique la dispersion au sein des jours ({ $numbers }).
days-count = Ce sont les { $days } jours, non les { $intervals } intervalles, qui comptent comme observations indépendantes : chaque jour est laissé de côté tour à tour, ce qui couvre les différences de niveau et de pente et laisse { $freedom ->
    [one] { $freedom } degré
   *[other] { $freedom } degrés
} de liberté.
days-count-two = Ce sont les { $days } jours, non les { $intervals } intervalles, qui comptent comme observations indépendantes : chaque jour est laissé de côté tour à tour, avec { $freedom ->
    [one] { $freedom } degré
   *[other] { $freedom } degrés
} de liberté. Deux jours disent peu de la façon dont les jours diffèrent ; l’intervalle est donc large.
days-agree = Laisser de côté tour à tour chacun des { $days } jours donne un intervalle plus étroit que la dispersion des intervalles ; c’est donc cette dispersion qui est retenue.
days-cannot-be-left-out = Aucun jour ne peut être laissé de côté, car les autres ne donnent pas de droite : l’incertitude repose sur les intervalles, et la variation d’un jour à l’autre n’y est pas.
neighbours-drift = Durbin–Watson au sein des séries d = { $statistic } (2 : indépendants), bilatéral { $p } : des intervalles voisins s’écartent du même côté (autocorrélation positive), comme quand l’orientation ou le ciel dérive.
neighbours-share = Durbin–Watson au sein des séries d = { $statistic } (2 : indépendants), bilatéral { $p } : des intervalles voisins partagent un relevé de l’eau, leurs erreurs alternent donc.
neighbours-by-turns = Durbin–Watson au sein des séries d = { $statistic } (2 : indépendants), bilatéral { $p } : les erreurs d’intervalles voisins alternent, plus que ne l’explique le relevé de l’eau qu’ils partagent , comme quand on réoriente un intervalle sur deux.
neighbours-not-shown = Durbin–Watson au sein des séries d = { $statistic } (2 : indépendants), bilatéral { $p } : aucune autocorrélation démontrée.
influential = Intervalles influents (distance de Cook > 4/n), aucun retiré : { $intervals }.
influential-more = Intervalles influents (distance de Cook > 4/n), aucun retiré : { $intervals } ; et { $more } de plus.
influential-one = { $date } { $time } ({ $distance } ; sans lui { $power } W)

## Provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = Limite propre : { $what } { $limit }.
# guard = true est écrit dans le fichier de campagne et reste tel quel.
deviation-guard = Règle de décision propre : l’incertitude est comptée contre chaque limite, ce que la norme ne demande pas.
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run } : de { $from } à { $to } exclu par l’opérateur : { $reason }.
deviation-excluded-no-reason = { $run } : de { $from } à { $to } exclu par l’opérateur : aucune raison donnée.
deviation-findings = Voir aussi les écarts constatés ou les remarques en tête de ce rapport.
deviation-interval = Durée d’intervalle : { $shortest } à { $longest } s sont acceptées, la puissance étant prise sur la durée réelle ; la norme demande { $practice } s.
# Labels stand at the left; there is room for 20 letters.
made-with = programme
made-issued = établi
made-practice = norme
made-solar-time = heure solaire
made-solar-time-text = NREL/TP-560-34302, d’après l’heure et la longitude
made-boiling = point d’ébullition
made-boiling-text = atmosphère ISO 2533 là où aucune pression n’a été mesurée, saturation IAPWS-IF97
made-decision = règle de décision
made-decision-text = chaque valeur observée est confrontée à sa limite, sans tenir compte de son incertitude ; celle qui est égale à la limite la respecte : acceptation simple, JCGM 106:2012
made-decision-guarded = chaque valeur observée est confrontée à sa limite avec son incertitude élargie (k = { $factor }), et la respecte quand toute cette plage est en deçà : irradiance ± { $irradiance } %, eau ± { $water }, air ± { $ambient }, une heure d’horloge ± { $clock } s, masse d’eau ± { $mass } %, { $wind } ; surface de captation, comptages et R² sans elle : acceptation avec bande de garde, JCGM 106:2012, 8.3, et ILAC-G8
made-decision-wind = vent ± { $wind }
made-decision-no-wind = vent sans elle, car son incertitude n’est pas indiquée
# As in English
made-irradiance = irradiance
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimée { $way } ; plan normal au rayonnement direct d’après Liu et Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimée { $way }, trouble de Linke { $turbidity } comme indiqué ; plan normal au rayonnement direct d’après Liu et Jordan 1963
made-irradiance-usual = estimée { $way }, trouble de Linke { $turbidity } (pratique courante) ; plan normal au rayonnement direct d’après Liu et Jordan 1963
unchecked-memory = Cités de mémoire, sans le texte sous les yeux : { $works }. Les calculs sont vérifiés par des exemples publiés et un second calcul indépendant ; ces valeurs ne le sont pas. Vérifiez celles dont dépend une décision.
unchecked-common = « Pratique courante » signifie qu’aucune source publiée n’est connue.
memory-s580 = ASAE S580.1 (ses limites, reformulées, et la place qu’elle demande pour les capteurs)
memory-decision = JCGM 106:2012 (règle de décision)
memory-decision-guarded = JCGM 106:2012 et ILAC-G8 (règle de décision)
memory-iec-60751 = IEC 60751 (tolérance des thermomètres à résistance)
memory-clear-sky = Reno, Hansen et Stein 2012 (les 5 % d’un modèle de ciel clair)
memory-conversion = Gueymard et Ruiz-Arias 2016 (la dispersion du rayonnement direct)
memory-balance = Funk et Larson 1998 (le bilan thermique ; son résumé a été lu) ; Lahkar, Bhamu et Samdarshi 2012 (le rapport optothermique)
memory-dry = Mullick, Kandpal et Saxena 1987 (le récipient à sec)
memory-box = Mullick, Kandpal et Saxena 1987 et IS 13429 (facteurs de mérite)
memory-dish = Mullick, Kandpal et Kumar 1991 (chiffres d’une parabole)
memory-efficiency = Kumar, Vishwanath et Gupta 2012 (pic d’exergie ; son résumé a été lu)
memory-food = Chen 1985 et l’ASHRAE Handbook, Refrigeration (chaleurs massiques des aliments)
memory-groups = Piepho 2004 (groupes par lettres)
memory-cautions = ISO 13732-1:2006 (brûlures) ; Ciochetti et Metcalf 1984 (pasteurisation)
report-end = Fin du rapport { $number }
# { $minutes }: "20".
balance-readings-far-apart = les relevés sont le plus souvent espacés de { $minutes } minutes, et aucun intervalle de la norme n’y tient : gain et perte reposent sur les pas d’un relevé au suivant, et sont indicatifs
balance-readings-far-apart-remedy = relevez l’eau toutes les 9 à 11 minutes
balance-one-day = toutes les données sont d’un seul jour, ou aucun jour ne peut être laissé de côté dans l’ajustement ; les plages du gain et de la perte ne sont donc pas à 95 %
balance-one-day-remedy = refaire l’essai d’autres jours
balance-irradiance-hardly-varied = l’irradiance n’a guère varié ({ $range } W/m²) : le gain et la perte ne sont séparés que par la température de l’eau, et les valeurs à une autre irradiance reposent sur le modèle
balance-irradiance-hardly-varied-remedy = faire des essais par un soleil plus faible et par un soleil plus fort
balance-loss-not-shown = la perte est de { $loss } W/K et peut être nulle ({ $range } W/K)
balance-loss-not-shown-remedy = faire des essais sur une plage plus large de températures de l’eau, et sur plus de jours
cooking-opinion = Les durées, quantités et mois de cette section, et toute durée de chauffage en tête de ce rapport, sont une interprétation : ils découlent de l’essai et des hypothèses ci-dessous, et n’ont pas été mesurés.

## What it means for cooking

cooking-no-line = Aucune droite n’a été ajustée, on ne peut donc donner aucune durée de chauffage.
cooking-not-valid = Omis : les chiffres contredisent la physique, on ne peut donc rien en tirer pour les durées de chauffage, les aliments et les mois.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, comme à l’essai
cooking-no = non
cooking-no-ends = non ; le chauffage cesse vers { $temperature }
cooking-probably-not = probablement pas
cooking-probably-not-ends = probablement pas ; le chauffage cesse vers { $temperature }
cooking-time-range = { $shortest } à { $longest }
cooking-time-open = { $shortest } ou plus, peut-être jamais
# As in English
cooking-boil = { $time } ({ $range })
cooking-foods-title = Aliments portés à la température de cuisson et maintenus à celle-ci en { $time } au plus
cooking-foods-all = En { $time }, la durée de la fenêtre solaire, chacun de ces aliments est porté à sa température de cuisson et y est maintenu, en quantité égale à la charge de l’essai, { $load }, ou plus : { $foods }.
# As in English
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = À partir de { $start } sous { $irradiance } W/m², pendant la fenêtre solaire ; au plus la charge de l’essai, { $load }, au-delà de laquelle l’essai ne dit rien. Chaleurs massiques : Chen 1985, avec les teneurs en eau de l’ASHRAE Handbook, Refrigeration. Températures et durées de cuisson : pratique courante ; { $safe } : USDA FSIS. Estimation : vérifiez avec un thermomètre dans l’aliment.
cooking-amount-or-more = { $amount } ou plus
cooking-cooked-at = { $temperature } pendant { $time }
cooking-amount-range = { $lowest } à { $highest }
cooking-amount-up-to = de rien à { $highest }
cooking-amount-none = rien
cooking-amount-probably-none = probablement rien
cooking-heat-ends = Sous { $irradiance } W/m², le chauffage cesse à une température de l’eau de { $end } ({ $range }), où la puissance atteint zéro ; l’eau bout ici à { $boiling }.
cooking-heat-ends-or-boils = Il risque de ne pas porter l’eau à l’ébullition, { $boiling } ici : sous { $irradiance } W/m², le chauffage cesse, d’après la droite, vers { $end }, valeur incertaine (de { $lowest } à l’ébullition).
cooking-ends-perhaps = L’eau bout ici à { $boiling }, probablement pendant que le cuiseur chauffe encore ; d’après la plage de la droite, le chauffage peut cesser dès { $lowest }.
cooking-ends-above = L’eau bout ici à { $boiling } ; le cuiseur chauffe encore à l’ébullition.
cooking-never-ends = La puissance ne baisse pas quand l’eau chauffe, on ne peut donc en tirer aucune fin du chauffage ; l’eau bout ici à { $boiling }.
cooking-light-of-test = Irradiance constante de { $irradiance } W/m² dans le plan du capteur, la moyenne des intervalles retenus, à laquelle la droite n’a pas à changer d’échelle ; vent comme dans les intervalles retenus, cuiseur réorienté comme pendant l’essai.
cooking-light-asked = Irradiance constante de { $irradiance } W/m² dans le plan du capteur, comme la campagne le demande, avec la puissance d’après le bilan thermique ; vent comme dans les intervalles retenus, cuiseur réorienté comme pendant l’essai.
cooking-air-mean = Température ambiante { $ambient }, la moyenne des intervalles retenus.
cooking-air-asked = Température ambiante { $ambient }, comme la campagne le demande.
cooking-assumed-load = Toute charge absorbe la puissance de la charge de l’essai ; des charges beaucoup plus petites ou plus grandes en absorbent moins ou plus. La chaleur emmagasinée par la marmite n’est pas comptée. Au-delà des températures des intervalles retenus, la droite est prolongée telle quelle.
cooking-assumed-edges = Les plages suivent la bande à 95 % de la puissance, instruments compris, et valent pour la moyenne de nombreux chauffages, non pour un seul.
cooking-assumed-edges-one-day = Les plages suivent la bande de la puissance, instruments compris ; elle ne contient pas la variation d’un jour à l’autre et n’est pas à 95 %, si bien qu’un autre jour les durées peuvent en sortir.
cooking-no-months = Pas d’estimation mensuelle : l’irradiance a été mesurée dans le plan horizontal, et le modèle de ciel clair vaut pour le plan face au soleil.
cooking-assumed-water = L’eau n’est pas un aliment : les aliments chauffent plus lentement, et soulever le couvercle coûte de nombreuses minutes.
food-potatoes = pommes de terre, en morceaux
food-carrots = carottes, en morceaux
food-cabbage = chou, émincé
food-rice = riz avec deux fois sa masse d’eau
food-eggs = œufs, entiers
food-fish = poisson (cabillaud)

## Clear days through the year

year-note-balance = Estimation pour le 15 de chaque mois sous un ciel clair (Ineichen et Perez 2002), en comptant les heures avec { $irradiance } W/m² ou plus dans le plan normal au rayonnement direct ; nuages et brume réduisent ces valeurs. Chaleur : d’après le bilan thermique, dans de l’eau à { $difference } au-dessus de l’air ; la moyenne des mois est de { $mean } kWh par jour. Température ambiante { $ambient } toute l’année, cuiseur orienté toute la journée.
year-note-water = Eau : charges de { $load }, l’une après l’autre, chacune portée de { $start } à { $end } et maintenue pendant { $time } (Ciochetti et Metcalf 1984) ; { $kilogram } est compté comme { $litre }. Le chauffage commence à { $start }, les litres ne se déduisent donc pas de la chaleur indiquée à côté. L’OMS constate que les virus ne meurent que lentement entre 60 °C et 65 °C : quand vous le pouvez, portez l’eau à gros bouillons, et lisez la mise en garde sur l’eau de boisson. Pour l’eau claire seulement ; la chaleur n’enlève pas les produits chimiques.
year-caption = Barres : estimation ; moustaches : sa plage due à la seule incertitude du bilan thermique. Heures comptées : de { $fewest } à { $most }.
# As in English
year-hours-of = { $hours } ({ $month })
year-axis-heat = chaleur par jour, MJ
year-axis-water = eau pasteurisée par jour, { $unit }
year-alt = Deux diagrammes en barres sur les mois d’une année. { $months }.
year-alt-month = { $month } : { $heat } MJ ({ $heats }) par jour, { $water } L ({ $waters })
fuel-name = combustible
fuel-heat = chaleur par jour clair
fuel-heat-text = { $heat } MJ, la moyenne des mois ci-dessus
fuel-value = pouvoir calorifique inférieur
fuel-stove = rendement du fourneau
fuel-days = jours par an
fuel-result = Avec ces hypothèses, toutes de l’opérateur, la même chaleur demanderait, selon l’estimation, { $best } de combustible ({ $fuel }) par an ({ $range } selon la seule incertitude du résultat). Il n’est économisé que dans la mesure où le feu n’est vraiment pas allumé ; rien n’est promis.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Les règlements locaux, et la pratique des professionnels habilités à travailler selon ces règlements, passent avant tout ce que contient ce rapport. Le rapport évalue la chaleur ; il ne se prononce pas sur la sécurité du cuiseur ni sur celle des aliments.
caution-governs = Tant qu’une personne de langue française n’a pas vérifié cette traduction, c’est le texte anglais qui fait foi.
caution-burns-title = Brûlures par contact, liquide ou vapeur
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
caution-materials-text = L’opérateur reste des heures au soleil : chapeau, ombre, eau et pauses. N’utilisez ni peinture, ni film, ni colle, ni métal galvanisé qui chauffe près des aliments ou dégage des émanations ; chauffez une fois un cuiseur neuf sans aliments, en plein air.
caution-food-title = Sécurité des aliments
caution-food-text = Les bactéries se multiplient vite entre 5 °C et 60 °C. Les aliments ne doivent pas rester dans cette plage plus de deux heures en tout, plus d’une heure là où l’air dépasse 32 °C ; un cuiseur qui chauffe lentement, ou un nuage, peut leur faire dépasser cette durée, et réchauffer n’efface pas ce qui s’est formé entre-temps. Mesurez à l’intérieur de l’aliment : au moins 74 °C partout. Gardez les aliments chauds à 60 °C ou plus. En cas de doute, jetez-les.
caution-water-title = Eau de boisson
caution-water-text = La chaleur tue les germes ; l’ébullition n’enlève ni produits chimiques, ni sel, ni saleté. Portez toute l’eau à gros bouillons et laissez-la bouillir une minute, trois au-dessus de { $elevation }. Moins de chaleur demande plus de temps et est moins sûr : 65 °C maintenus pendant six minutes, c’est ce qu’on appelle pasteurisé, et les virus ne meurent que lentement entre 60 °C et 65 °C. Laissez refroidir l’eau couverte, dans le récipient où elle a chauffé.
caution-sources = Sources. Brûlures : ISO 13732-1:2006. Aliments : USDA FSIS, zone de danger de 40 à 140 °F, règle des deux heures et températures minimales sûres, dont la plus haute est 74 °C, celle de la volaille et des restes ; OMS, Cinq clés pour des aliments plus sûrs, 5 °C à 60 °C. Eau : avis de faire bouillir l’eau de l’US EPA (1 min, 3 min au-dessus de 5000 ft), cité dans Emerging Infectious Diseases 31(8), 2025 ; WHO/FWC/WSH/15.02 ; Ciochetti et Metcalf 1984, Appl. Environ. Microbiol. 47. Tout le reste : pratique courante.

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
    } de la colonne « { $column } » hors des points de son étalonnage, extrapolés par le segment de droite le plus proche
notice-quantity-in-both = { $quantity } : dans { $log } et dans { $weather } ; ce qui est relevé à côté du cuiseur est retenu
notice-weather-in-part = { $weather } ne couvre qu’une partie de { $log } ; vérifiez les horloges des deux (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log } : partagé en { $runs ->
        [one] { $runs } série
       *[other] { $runs } séries
    } selon les dates et les trous, chacun du début à la fin de la série ; laissés de côté : { $parts } et { $readings }
notice-log-split-rising = { $log } : partagé en { $runs ->
        [one] { $runs } série
       *[other] { $runs } séries
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
notice-sensors-apart = { $log } : les capteurs ({ $quantity }) s’écartent de plus de { $apart } l’un de l’autre à { $readings ->
        [one] { $readings } instant
       *[other] { $readings } instants
    } ; leur moyenne est utilisée : vérifiez qu’aucun n’est en panne
notice-sensors-incomplete = { $log } : à { $readings ->
        [one] { $readings } instant
       *[other] { $readings } instants
    }, un des capteurs ({ $quantity }) n’a pas de relevé ; la moyenne des autres y fait un saut s’ils diffèrent
notice-long-run = { $log } : les relevés s’étendent sur { $days } jours, une série est un seul chauffage en un jour ; vérifiez les dates, fixez le début et la fin, ou split = "daily"
notice-above-boiling = { $log } : l’eau atteint { $highest }, au-dessus de son point d’ébullition de { $boiling } ici ; vérifiez le capteur, l’altitude ou la pression
notice-odd-noon = { $log } : le midi solaire tombe à { $noon } à l’horloge ; vérifiez la longitude (est positif) et le fuseau horaire
notice-column-not-found = { $log } : aucune colonne n’est comprise comme { $quantity }, ce qui compte comme non mesuré ; colonnes non lues : { $ignored } ; si l’une d’elles contient cette grandeur, nommez-la sous [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = lu hors du dossier de la campagne, comme l’a permis la personne qui a fait ceci (--allow-outside) : { $files }
notice-trimmed = { $log } : { $readings ->
        [one] { $readings } relevé avant le début de la série ou après sa fin laissé de côté
       *[other] { $readings } relevés avant le début de la série ou après sa fin laissés de côté
    }
notice-no-intervals = { $log } : il n’y a pas deux relevés de l’eau séparés de { $shortest } à { $longest } minutes, il n’y a donc pas d’intervalle ; enregistrez à un pas dont la somme fait { $minutes } minutes
notice-idle-exclusion = { $log } : la période exclue de { $from } à { $to } ne touche aucun intervalle ; vérifiez ses heures
notice-stall = { $log } : l’eau gagne moins de la moitié de ce que dit la droite { $spans }, comme sous un nuage, alors que le ciel est dit sans nuages ; regardez vos notes, et l’orientation
# A span of clock times: from 11:20 to 11:40.
notice-span = de { $from } à { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = entre { $cold } et { $hot }
danger-measured = sécurité des aliments : dans { $run }, l’eau est restée { $zone } pendant { $time } ; les aliments ne doivent pas rester { $zone }, où les bactéries se multiplient, plus de { $longest } en tout (USDA FSIS, OMS) : cuisez de plus petites quantités, commencez avec de l’eau chaude, et gardez viande, poisson, œufs, lait et riz cuit pour un soleil plus fort ou un autre fourneau
danger-predicted = sécurité des aliments : { $predicted } ; les aliments ne doivent pas rester { $zone }, où les bactéries se multiplient, plus de { $longest } en tout (USDA FSIS, OMS) : cuisez de plus petites quantités, commencez avec de l’eau chaude, et gardez viande, poisson, œufs, lait et riz cuit pour un soleil plus fort ou un autre fourneau
danger-both = sécurité des aliments : dans { $run }, l’eau est restée { $zone } pendant { $time }, et { $predicted } ; les aliments ne doivent pas rester { $zone }, où les bactéries se multiplient, plus de { $longest } en tout (USDA FSIS, OMS) : cuisez de plus petites quantités, commencez avec de l’eau chaude, et gardez viande, poisson, œufs, lait et riz cuit pour un soleil plus fort ou un autre fourneau
danger-expected-never = on ne s’attend pas à ce que la charge de l’essai arrive à { $hot }
danger-expected = on s’attend à ce que la charge de l’essai mette environ { $time } pour arriver à { $hot } ({ $shortest } à { $longest })
danger-expected-open = on s’attend à ce que la charge de l’essai mette environ { $time } pour arriver à { $hot } ({ $shortest } ou plus, et peut-être jamais)
# What the line says, within the sentences above.
notice-above-film = à température ambiante, l’eau absorbe, d’après la droite, { $share } % du rayonnement solaire intercepté, plus que ce que renvoie un film réfléchissant (86 % ; pratique courante, sans source publiée) ; vérifiez la surface de captation, la masse d’eau et l’irradiance
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = incertitude non indiquée, on suppose donc l’instrument le plus prudent : { $taken } ; indiquez la classe ou l’incertitude sous [instruments]
notice-instrument-taken = { $quantity } par { $class }
notice-date-differs = { $log } : la date donnée pour la série est { $stated }, ses relevés commencent le { $found } ; les relevés sont retenus
# Slips. { $zone } is a time zone, { $away } and { $near } are kilometres, { $longitude } and { $latitude } degrees.
notice-odd-noon-sign = { $log } : le midi solaire tombe à { $noon } à l’horloge ; avec { $longitude } pour longitude il tomberait à { $meant } : vérifiez le signe de longitude_deg (est positif), sinon le fuseau horaire
notice-odd-noon-exchanged = { $log } : le midi solaire tombe à { $noon } à l’horloge ; en échangeant latitude et longitude il tomberait à { $meant } : vérifiez si latitude_deg et longitude_deg sont l’une à la place de l’autre, sinon le fuseau horaire
notice-far-from-zone-sign = le site est à { $away } km du lieu principal de son fuseau horaire { $zone } ; avec { $longitude } pour longitude il serait à moins de { $near } km : vérifiez le signe de longitude_deg (est positif), sinon le fuseau horaire
notice-far-from-zone-exchanged = le site est à { $away } km du lieu principal de son fuseau horaire { $zone } ; à la latitude { $latitude } et à la longitude { $longitude } il serait à moins de { $near } km : vérifiez si latitude_deg et longitude_deg sont l’une à la place de l’autre, sinon le fuseau horaire
notice-sun-down = { $log } : { $irradiance } W/m² à { $time } le { $date }, quand le soleil est ici sous l’horizon ; vérifiez l’horloge de l’enregistreur et son fuseau (time_zone sous [format]), la date et les coordonnées du site
notice-sun-low = { $log } : { $irradiance } W/m² à { $time } le { $date }, quand le soleil est ici à { $elevation }° de hauteur et qu’un ciel sans nuages donne au plus environ { $most } W/m² ; vérifiez l’horloge de l’enregistreur et son fuseau (time_zone sous [format]), les coordonnées du site et l’unité de l’irradiance
notice-heats-at-night = { $log } : l’eau chauffe de { $from } à { $to } le { $date }, alors que le soleil est ici sous l’horizon ; vérifiez l’horloge de l’enregistreur et son fuseau (time_zone sous [format]), matin et après-midi, et les coordonnées du site
# { $first } to { $last } are the dates of the other runs.
notice-odd-year = { $log } : ses relevés sont du { $found }, ceux des autres séries du { $first } au { $last } ; si l’année est une erreur et qu’il s’agit du { $meant }, corrigez-la dans le fichier de mesures ou réglez l’horloge de l’enregistreur
notice-odd-month = { $log } : ses relevés sont du { $found }, ceux des autres séries du { $first } au { $last }, et elle est citée entre elles ; si le mois est une erreur et qu’il s’agit du { $meant }, corrigez-le dans le fichier de mesures ou réglez l’horloge de l’enregistreur
notice-odd-day-and-month = { $log } : ses relevés sont du { $found }, ceux des autres séries du { $first } au { $last } ; si le jour et le mois sont échangés et qu’il s’agit du { $meant }, dites-le par date_order sous [format], ou corrigez la date dans le fichier de mesures
notice-date-of-name = { $log } : son nom dit { $named }, ses relevés sont du { $found } ; corrigez ce qui est une erreur
notice-clock-not-set = { $log } : ses relevés sont du { $found }, date à partir de laquelle comptent les horloges jamais réglées ; écrivez le jour de l’essai dans le fichier de mesures, et réglez l’horloge de l’enregistreur
notice-in-future = { $log } : ses relevés sont du { $found }, et nous sommes le { $issued } ; { $runs ->
        [one] vérifiez la date dans le fichier de mesures et l’horloge de cet ordinateur
       *[other] en tout { $runs } séries sont à venir ; vérifiez les dates dans les fichiers de mesures et l’horloge de cet ordinateur
    }
notice-odd-run = { $log } : ses intervalles prennent { $share } % de la puissance que dit la droite des { $others } autres séries ; si elle est d’un autre cuiseur, ou si sa charge ou ses colonnes sont autres, faites-en une autre campagne ou corrigez-les ; sinon, dites dans ses notes ce qui était différent
# { $quantity } is a quantity-…; { $time } is a duration.
notice-stuck-sensor = { $log } : { $quantity } vaut { $value } { $unit } dans chacun des { $readings } relevés pendant { $time }, alors que d’autres grandeurs changent ; vérifiez que le capteur était branché et que c’est bien sa colonne ; laissez vides les cellules où rien n’a été mesuré
# { $first }, { $highest }: numbers as they stand in the log, without a unit.
notice-celsius-as-fahrenheit = { $log } : cela ressemble à des °C : l’eau dans la colonne « { $column } » commence à { $first }, près de l’air à { $air }, et atteint au plus { $highest } ; en °F elle commencerait à { $first_c } ; si elle est en °C, écrivez (°C) après l’en-tête, ou corrigez l’unité de l’eau sous [units]
notice-celsius-as-fahrenheit-no-air = { $log } : cela ressemble à des °C : l’eau dans la colonne « { $column } » commence à { $first } et atteint au plus { $highest } ; en °F elle commencerait à { $first_c } ; si elle est en °C, écrivez (°C) après l’en-tête, ou corrigez l’unité de l’eau sous [units]
notice-water-air-exchanged = { $log } : l’air monte de { $air } et l’eau de { $water } ; si les colonnes sont échangées, nommez chacune par water_temperature et ambient_temperature sous [columns]
# { $runs } is a list of runs; { $water }, { $area } and loads have their units.
notice-load-pounds = { $runs } : { $water } d’eau sur { $area } font { $load } ; si le nombre était en livres, ce serait { $meant }, et { $expected } sont attendus : si c’est le cas, convertissez-le (1 lb vaut 0,4536 kg)
notice-load-square-feet = { $runs } : { $water } d’eau sur { $area } font { $load } ; si l’aire était en pieds carrés, ou ses longueurs en pieds, ce serait { $meant }, et { $expected } sont attendus : si c’est le cas, convertissez-la (1 ft² vaut 0,0929 m², 1 ft vaut 0,3048 m)
notice-load-kilograms = { $runs } : { $water } d’eau sur { $area } font { $load } ; si des kilogrammes ont été convertis comme des livres, ce serait { $meant }, et { $expected } sont attendus : si c’est le cas, écrivez les kilogrammes tels que pesés
notice-load-square-metres = { $runs } : { $water } d’eau sur { $area } font { $load } ; si des mètres carrés ont été convertis comme des pieds carrés, ce serait { $meant }, et { $expected } sont attendus : si c’est le cas, écrivez les mètres carrés tels que mesurés

## How the logs were read

quantity-time = temps
# As in English
quantity-date = date
quantity-clock = heure d’horloge
quantity-elapsed = temps écoulé
quantity-water = température de l’eau
quantity-vessel = température du récipient
quantity-ambient = température ambiante
# As in English
quantity-irradiance = irradiance
quantity-wind = vitesse du vent
skip-before-header = avant l’en-tête
skip-units-row = unités sous l’en-tête
skip-between = entre l’en-tête et les relevés
skip-remark = commentaire
skip-blank = vide
skip-header-again = en-tête répété
skip-before-header-again = avant un en-tête répété
skip-footer = après le dernier relevé
skip-cut-off = coupée à la fin du fichier
skipped-more = { $lines } et { $more } de plus
skipped-lines = { $count ->
        [one] ligne { $lines } sautée ({ $reason })
       *[other] lignes { $lines } sautées ({ $reason })
    }
# Labels and texts of a list of facts about a log.
log-form = forme
log-form-text = { $written_in } ; en-tête à la ligne { $line } ; marque décimale : { $mark }
log-time-text = temps : { $format }, comme dans « { $example } » ; fuseau : { $zone }
log-clock = horloge
log-clock-text = { $seconds } s ajoutées à toutes les heures
log-notes = notes : on lit celles qui disent que le cuiseur a été réorienté vers le soleil
log-not-read = non lu
log-readings = { $readings ->
        [one] { $readings } relevé de { $from } à { $to }
       *[other] { $readings } relevés de { $from } à { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } relevé de { $from } à { $to }, le plus souvent un toutes les { $step } s
       *[other] { $readings } relevés de { $from } à { $to }, le plus souvent un toutes les { $step } s
    }
# The same once for several logs: a label, and what stands beside it.
log-step = relevés
log-step-text = le plus souvent un toutes les { $step } s
# How a column was understood: water temperature (synonym), °C (header).
# As in English
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }) ; { $corrections }
log-column-one-source = { $quantity }, { $unit } ({ $found_by })
log-column-one-source-corrected = { $quantity }, { $unit } ({ $found_by }) ; { $corrections }
found-campaign-file = fichier de campagne
found-header = en-tête
found-synonym = synonyme
found-elimination = rien d’autre dans un fichier météo
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
time-stopwatch = temps écoulé depuis le début de la série
time-since-1970 = { $unit } depuis 1970
time-serial = jours de tableur depuis 1899-12-30
time-elapsed = { $unit } depuis le début de la série (temps écoulé)
zone-epoch = UTC (depuis 1970)
zone-start = celui du début de la série
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
# Of dates such as 10.06.2026, and of those such as 10/06/26.
order-points = les points séparent jour, mois et année
order-only-usual = le seul ordre usuel où chaque ligne est un jour
order-first-row = la première ligne
order-same-day = le même jour dans n’importe quel ordre
order-only-following = le seul ordre où les jours se suivent
order-run-date = la date de la série
order-year-month-day = année-mois-jour
order-day-month-year = jour-mois-année
order-month-day-year = mois-jour-année

# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = écart de température Td, eau moins ambiante, { $unit }
# Upright, up to 45 letters.
figure-power = puissance de cuisson normalisée Ps, W
figure-power-estimated = Ps, W, avec irradiance estimée
# As in English
figure-power-short = Ps, W
figure-power-short-estimated = Ps estimée, W
# In an empty figure.
figure-no-interval = aucun intervalle complet, il n’y a donc rien à tracer
figure-nothing-to-plot = irradiance non mesurée, il n’y a donc rien à tracer
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W à { $at }

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = écart de température Td, { $unit }
figure-start = heure locale au début
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = quantile de la loi normale réduite
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
figure-aimed = réorienté
figure-boils = bout à { $at }
figure-below-boiling = ébullition − { $margin }
figure-above-ambient = ambiante + { $margin }
figure-estimated = estimée

# The comparison of several campaigns, in the order of its pages.
#
# { $first } and { $second } are campaigns by their titles, as the testers wrote them, such as
# "Box one, lid open"; where two have one title, with the folder's name in brackets behind it.
# Where there are many, campaigns are called by numbers (calls-numbers). The difference is that of
# the second from the first.

## Comparison: every page

comparison-kind = Cuiseurs solaires comparés
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = { $cookers ->
        [one] { $campaigns } campagnes d’un même cuiseur
       *[other] { $campaigns } campagnes de { $cookers } cuiseurs
    }
# As in English
comparison-sites = { $count } sites
# In place of a long list of those who tested.
comparison-authors = { $count } opérateurs
comparison-statement = Les résultats ne valent que pour les cuiseurs soumis à l’essai. Reproduction autorisée dans son intégralité seulement.
# At the head of every page.
comparison-mark-mixed = Procédures ou limites mélangées
comparison-mark-not-valid = Non valide en partie
comparison-mark-indicative = Indicatif en partie
comparison-mark-invented = Données inventées, pour démonstration
comparison-end = Fin du rapport { $number }

## The web page that leads to the reports of several campaigns

# { $count }: how many reports it leads to.
index-title = { $count ->
    [one] Un rapport d’essai de cuiseur solaire
   *[other] { $count } rapports d’essai de cuiseurs solaires
}
index-subtitle = Établi le { $date }
# { $name }: a campaign.
index-invented = { $name } (données inventées)
index-some-invented = Une partie des données est inventée, pour démonstration
index-statement = Chaque résultat ne vaut que pour le cuiseur soumis à l’essai.
index-no-rating = Aucune de ces campagnes n’a de résultat.
# "compare" is a command.
index-order = L’ordre est celui des nombres et ne dit pas quel cuiseur est le meilleur : les campagnes peuvent différer par le lieu, la météo, la charge et les instruments. La commande « simmerline compare » montre si la différence entre deux d’entre elles est réelle.
page-index-reports = Rapports et données
index-web-page = rapport
index-pdf = rapport en PDF
index-results = résultats en données
index-intervals = intervalles en tableau
# { $names }: campaigns, with ";" between them.
index-failed = { $count ->
    [one] Aucun rapport n’a été écrit sur une campagne
   *[other] Aucun rapport n’a été écrit sur { $count } campagnes
} : { $names }. Le motif est affiché dans le terminal.
index-caution = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et ces résultats ne disent rien de la sécurité des aliments. Lisez les mises en garde du rapport avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.

## Comparison: what campaigns are called

# A campaign's title within a sentence.
calls-name = « { $name } »
# Some campaigns by the numbers that they have in the comparison: "2", or "1–4, 7".
calls-numbers = { $count ->
        [one] nº { $numbers }
       *[other] nºs { $numbers }
    }

## Comparison: its title
#
# { $name }, { $first }, { $second }: titles of campaigns. { $power }: verdict-power, or
# verdict-power-indicative. "Gives" is of standardised cooking power at 50 K.

# As in English
verdict-power = { $power } ± { $half_width } W
verdict-power-indicative = { $power } (indicatif seulement)
verdict-title-only = Un seul résultat valable : { $name }, { $power }
verdict-title-two = { $first } donne { $difference } de plus que { $second }
verdict-title-two-alike = { $first } et { $second } ne se distinguent pas
verdict-title-two-untold = On ne peut pas dire lequel donne plus, { $first } ou { $second }
verdict-title-most = { $name } donne le plus : { $power }
# Some cannot be held against it; or none can.
verdict-title-most-told = { $name } donne le plus parmi ceux qui sont comparables : { $power }
verdict-title-alone = { $name } a le résultat le plus élevé, { $power }, mais n’est pas comparable aux autres
verdict-title-leads-one = { $name } est en tête avec { $power }, mais ne se distingue pas de { $second }
# { $others }: at least two.
verdict-title-leads = { $name } est en tête avec { $power }, mais { $others } autres ne s’en distinguent pas
# { $second } gives more by the heat balances, which decide where irradiance differed.
verdict-title-beaten-by-one = { $name } a le résultat le plus élevé, { $power }, mais à irradiance égale { $second } donne plus
verdict-title-beaten = { $name } a le résultat le plus élevé, { $power }, mais à irradiance égale { $others } autres donnent plus
# Counts of those held against the baseline { $name }.
verdict-title-baseline = Face à { $name } ({ $power }) : { $more } au-dessus, { $less } au-dessous, { $alike } non distingués
verdict-baseline-unrated = { $name }, la référence, n’a pas de résultat valable ; aucun résultat n’est donc comparé.
# Beside a large number, which is { $minuend } less { $subtrahend }.
verdict-lead = { $minuend } moins { $subtrahend }, Ps(50), avec son intervalle à 95 %
verdict-lead-one-day = { $minuend } moins { $subtrahend }, Ps(50), avec son intervalle ; pas d’essais sur plusieurs jours chacun, il n’est donc pas à 95 %
verdict-lead-common = { $minuend } moins { $subtrahend }, puissance à 700 W/m² et 50 K d’après les bilans thermiques, avec son intervalle à 95 %
verdict-lead-common-one-day = { $minuend } moins { $subtrahend }, puissance à 700 W/m² et 50 K d’après les bilans thermiques, avec son intervalle ; pas d’essais sur plusieurs jours chacun, il n’est donc pas à 95 %
# { $pairs }: at least two.
verdict-in-all = Paires dont la différence est démontrée : { $shown } sur { $pairs }.
verdict-in-all-compared = Paires dont la différence est démontrée : { $shown } sur { $compared } comparables ({ $pairs } en tout).
verdict-untold-pairs = { $pairs ->
        [one] Une paire n’est pas comparable
       *[other] { $pairs } paires ne sont pas comparables
    } : l’irradiance moyenne différait, et les deux n’ont pas chacun un bilan thermique.
verdict-untold-pairs-planes = { $pairs ->
        [one] Une paire n’est pas comparable
       *[other] { $pairs } paires ne sont pas comparables
    } : l’irradiance de l’un est dans un autre plan que celle de l’autre.

## Comparison: the ranking
#
# Above its plot; then the headers of its columns, which have little room.

ranking-axis = Ps(50), W, avec son intervalle à 95 %
ranking-axis-one-day = Ps(50), W, avec son intervalle
page-ranking-campaign = campagne
# Over letters of groups, of which two campaigns that cannot be told apart have one in common.
page-ranking-groups = non distingués
# On a terminal: a difference with its interval and what it is of.
terminal-lead = { $value } W ({ $interval } W) : { $label }
# A header, over ranks.
terminal-rank = nº
# Over cells such as "0.94 · 45 · 4", in two lines.
ranking-rests-on = R², intervalles, jours
# For each square metre of intercept area, as the campaign files state it.
# As in English
ranking-per-area = W/m²
# { $currency }: as the tester wrote it.
# As in English
ranking-per-currency = W/{ $currency }
ranking-per-cost = W par unité de coût
# Headers of a column of differences.
ranking-from-first = nº 1 moins celle-ci, W
ranking-from-baseline = par rapport à la référence, W
# Below the ranking.
# What a pair that is shown to differ holds for; with several pairs for all of them.
pairs-together = { $pairs ->
    [one] 95 %
   *[other] 95 % pour l’ensemble des { $pairs } paires comparables, Holm
}
pairs-note-alone = Un intervalle est celui de sa paire seule, « démontrée » vaut pour toutes les paires ensemble : une différence dont l’intervalle exclut zéro peut ne pas être démontrée.
ranking-note-brackets = Une barre relie les campagnes qui ne se distinguent pas ({ pairs-together }) ; deux campagnes sans barre commune diffèrent.
ranking-note-brackets-dash = Une barre relie les campagnes qui ne se distinguent pas ({ pairs-together }) ; deux campagnes sans barre commune diffèrent, sauf si l’une a un tiret.
# The same where letters stand in place of bars: on a web page and a terminal.
ranking-note-letters = Les campagnes qui ont une lettre en commun ne se distinguent pas ({ pairs-together }) ; deux campagnes sans lettre commune diffèrent.
ranking-note-letters-dash = Les campagnes qui ont une lettre en commun ne se distinguent pas ({ pairs-together }) ; deux campagnes sans lettre commune diffèrent, sauf si l’une a un tiret.
ranking-note-all-apart = Toutes se distinguent ({ pairs-together }).
# Where some have a dash in place of letters.
ranking-note-rest-apart = Toutes celles sans tiret se distinguent ({ pairs-together }).
# Below the ranking, a list says of each rank from which others it cannot be told apart.
ranking-note-alike = La liste ci-dessous indique de quelles autres chaque campagne ne se distingue pas ({ pairs-together }).
# The same where numbers stand in the ranking itself.
ranking-note-alike-beside = « { page-ranking-groups } » : les numéros des campagnes dont chacune ne se distingue pas ({ pairs-together }).
# These two follow one of the above.
ranking-note-undecided = Deux campagnes qui ne sont pas comparables comptent comme non distinguées.
ranking-note-one-day = Deux campagnes sans essais sur plusieurs jours chacune comptent comme non distinguées, quel que soit leur écart.
ranking-note-dash = Un tiret : comparable à aucune des autres, ou seulement à d’autres qui ont un tiret.
ranking-note-not-held = Un tiret à la place d’une barre : comparable à aucune des autres, ou seulement à d’autres qui ont un tiret.
ranking-note-not-held-letters = Un tiret à la place de lettres : comparable à aucune des autres, ou seulement à d’autres qui ont un tiret.
ranking-note-differences = Différences avec leurs intervalles à 95 %. Gras : démontrée ({ pairs-together }). Gris : non démontrée.
ranking-note-differences-one-day = Différences avec leurs intervalles, à 95 % sauf ceux marqués †. Gras : démontrée ({ pairs-together }). Gris : non démontrée.
# On a terminal, which has no bold type.
terminal-note-differences = Différences avec leurs intervalles à 95 %. Précédée d’un point d’interrogation : non démontrée ({ pairs-together }).
terminal-note-differences-one-day = Différences avec leurs intervalles, à 95 % sauf ceux marqués †. Précédée d’un point d’interrogation : non démontrée ({ pairs-together }).
ranking-note-common = * : l’irradiance moyenne différait ; la différence est donc celle des puissances à 700 W/m² et 50 K d’après les bilans thermiques.
ranking-note-data = Toutes les paires sont dans le fichier de données.
page-ranking-continued = suite
# Read out where a campaign has no bar.
page-ranking-alone = distinguée de toutes les autres auxquelles elle est comparable
# Read out to those who do not see the plot.
ranking-alt = { $power } W, intervalle à 95 % { $range } W
ranking-alt-one-day = { $power } W, intervalle sans les jours { $range } W
# What the marks of the plot mean.
ranking-key-filled = Plein : conforme.
ranking-key-open = Vide : indicatif seulement.
ranking-key-struck = Barré : physiquement impossible, sans rang.
ranking-key-arrow = Flèche : l’intervalle se poursuit au-delà de l’axe.
ranking-key-one-day = Les intervalles sont à 95 %, sauf là où il est écrit « { status-one-day } ».
# { $names }: campaigns, with ";" between them.
ranking-left-out = Sans résultat : { $names }.
# { $level }: one of those that begin with ratings-; { $reasons }: some of the next, in two or
# three words each.
status-for = { $level } : { $reasons }
status-one-day = jours hors du ±
status-too-few-intervals = trop peu d’intervalles
status-too-few-days = trop peu de jours
status-r-squared-low = R² faible
status-line-not-falling = la puissance ne baisse pas quand l’eau chauffe
status-no-useful-heat = pas de chaleur utile à 50 K
status-extrapolated = 50 K non observés
status-load-off = autre charge
status-wind-not-measured = vent non mesuré
status-wind-estimated = vent estimé à vue
status-flat = capteur d’irradiance posé à plat
status-irradiance-missing = irradiance absente de certaines séries
status-plane-not-stated = plan de l’irradiance non indiqué
status-impossible-gain = plus de chaleur que de soleil
status-own-limits-looser = limites plus larges
status-own-limits-tighter = limites plus strictes
status-excluded = période exclue par l’opérateur

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } à { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = Les résultats de { $second } et de { $first } diffèrent de { $difference } W ({ $interval } W), mais { $second } a été soumis à l’essai sous { $second_sun } W/m² et { $first } sous { $first_sun } W/m², et le résultat met les pertes à l’échelle de l’irradiance : à eux seuls, les résultats ne montrent pas si les cuiseurs diffèrent.
# In place of all that follows up to verdict-untold, where the plane of irradiance differs.
verdict-planes = Les résultats de { $second } et de { $first } diffèrent de { $difference } W ({ $interval } W), mais l’irradiance de l’un est dans un autre plan que celle de l’autre ; on ne peut donc pas dire si les cuiseurs diffèrent.
# The sentence that follows is of that.
verdict-common = La suite porte sur les puissances à 700 W/m² et 50 K, d’après les bilans thermiques.
verdict-untold = Sans le bilan thermique des deux, on ne peut pas dire si les cuiseurs diffèrent.
# The sentence that follows is of that.
verdict-shown-more = { $second } donne { $difference } W de plus que { $first } ({ $interval } W) : une différence réelle.
verdict-shown-less = { $second } donne { $difference } W de moins que { $first } ({ $interval } W) : une différence réelle.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } donne { $difference } W de plus que { $first } ({ $interval } W), { $share } % : une différence réelle.
verdict-shown-less-share = { $second } donne { $difference } W de moins que { $first } ({ $interval } W), { $share } % : une différence réelle.
verdict-one-day-more = { $second } a donné { $difference } W de plus que { $first } ({ $interval } W) lors des essais, mais pas sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : refaites les deux essais d’autres jours.
verdict-one-day-less = { $second } a donné { $difference } W de moins que { $first } ({ $interval } W) lors des essais, mais pas sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : refaites les deux essais d’autres jours.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = { $second } donne { $difference } W de plus que { $first } ({ $interval } W), mais parmi { $pairs ->
        [one] { $pairs } paire
       *[other] { $pairs } paires
    }, une différence aussi grande arrive aussi par hasard : elle n’est pas démontrée.
verdict-by-chance-less = { $second } donne { $difference } W de moins que { $first } ({ $interval } W), mais parmi { $pairs ->
        [one] { $pairs } paire
       *[other] { $pairs } paires
    }, une différence aussi grande arrive aussi par hasard : elle n’est pas démontrée.
# One of the sentences that begin with needed- may follow.
verdict-not-shown-even = Aucune différence entre { $second } et { $first } n’a pu être démontrée. { $second } moins { $first } : toute valeur de { $interval } W est compatible avec les données.
verdict-not-shown-more = Aucune différence entre { $second } et { $first } n’a pu être démontrée : { $difference } W de plus, et toute valeur de { $interval } W est compatible avec les données.
verdict-not-shown-less = Aucune différence entre { $second } et { $first } n’a pu être démontrée : { $difference } W de moins, et toute valeur de { $interval } W est compatible avec les données.
# "One" is a difference, in the next three.
needed-other-days = Refaites les deux essais d’autres jours.
# Before one of those that begin with needed-; "one" there is a difference of these two.
needed-of = Entre « { $first } » et « { $second } » :
needed-none = Une différence de { $sought } W (un dixième de la plus grande puissance) aurait très probablement été vue.
needed-days = Avec { $days ->
        [one] { $days } jour de plus
       *[other] { $days } jours de plus
    } comme ceux des essais, pour chacun, on verrait très probablement une différence de { $sought } W (un dixième de la plus grande puissance).
needed-no-number = Des jours de plus, à eux seuls, ne montreraient guère une différence de { $sought } W (un dixième de la plus grande puissance) : les jours, ou les instruments sans id commun, diffèrent trop.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = Sans bilan thermique des deux, la cause d’une différence est inconnue.
cause-untold-planes = La cause d’une différence est inconnue, car des gains sous une irradiance dans des plans différents ne sont pas comparables.
# The next six are followed by cause-numbers.
cause-no-difference = Comme aucune différence n’est démontrée, aucune cause n’est nommée.
cause-not-shown = La cause de la différence n’est pas démontrée.
cause-more-gain = { $second } capte plus de soleil que { $first }, comme après un changement d’optique.
cause-less-gain = { $second } capte moins de soleil que { $first }, comme après un changement d’optique.
cause-more-loss = { $second } perd plus de chaleur par kelvin que { $first }, comme avec une moins bonne isolation, plus de vent ou sans couvercle.
cause-less-loss = { $second } perd moins de chaleur par kelvin que { $first }, comme avec une meilleure isolation, moins de vent ou un couvercle.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } moins { $first } d’après les bilans thermiques : gain { $gain } m² ({ $gain_interval } m²), perte { $loss } W/K ({ $loss_interval } W/K).
# In a cell of the matrix, where the difference is real: what it comes from.
# As in English
matrix-gain = gain
matrix-loss = perte
matrix-both = gain, perte

## Comparison: the matrix of differences

matrix-title = Différences : ligne moins colonne, W
# Read out in place of a cell. { $verdict }: difference-real or difference-not-shown.
# As in English
matrix-alt = { $value } W, { $interval } W, { $verdict }
matrix-untold = indéterminée
matrix-note = Ps(50), avec intervalles à 95 %. Gras : la différence est démontrée ({ pairs-together }). Gris : elle ne l’est pas.
matrix-note-one-day = Ps(50), avec intervalles, à 95 % sauf ceux marqués †. Gras : la différence est démontrée ({ pairs-together }). Gris : elle ne l’est pas.
# † stands before it.
matrix-note-of-one-day = Pas d’essais sur plusieurs jours chacun : l’intervalle n’est pas à 95 %, et aucune différence n’est démontrée.
# A star stands before it.
matrix-note-common = L’irradiance moyenne diffère de plus de { $percent } % : la différence est celle des puissances à 700 W/m² et 50 K d’après les bilans thermiques.
matrix-note-untold = – : indéterminée : l’irradiance moyenne différait, et les deux n’ont pas chacun un bilan thermique.
matrix-note-untold-planes = – : indéterminée : l’irradiance de l’un est dans un autre plan que celle de l’autre.
matrix-note-untold-either = – : indéterminée : l’irradiance de l’un est dans un autre plan que celle de l’autre, ou sa moyenne différait et les deux n’ont pas chacun un bilan thermique.
matrix-note-cause = Gain, perte : d’où vient la différence, pour autant que les bilans thermiques le montrent : rayonnement solaire capté, chaleur perdue.

## Comparison: lines and heating times

section-lines = Puissance selon l’écart de température
lines-caption = Puissance de cuisson normalisée Ps en W selon la température de l’eau au-dessus de l’air en K. En noir : la campagne nommée au-dessus du graphique, ses intervalles retenus, sa droite sur les écarts observés avec une bande à 95 % (dispersion, jours et instruments), et son résultat à 50 K. Gris : les autres. Les erreurs que des campagnes partagent sont dans chaque bande mais s’annulent dans une différence.
lines-caption-one-day = Puissance de cuisson normalisée Ps en W selon la température de l’eau au-dessus de l’air en K. En noir : la campagne nommée au-dessus du graphique, ses intervalles retenus, sa droite sur les écarts observés avec une bande (dispersion, jours et instruments, à 95 % ; d’un seul jour, sans les jours et non à 95 %), et son résultat à 50 K. Gris : les autres. Les erreurs que des campagnes partagent sont dans chaque bande mais s’annulent dans une différence.
# Read out to those who do not see the panel.
lines-alt = Droite Ps = { $intercept } W { $slope } W/K · Td ; à 50 K { $power } W, intervalle à 95 % { $range } W
lines-alt-one-day = Droite Ps = { $intercept } W { $slope } W/K · Td ; à 50 K { $power } W, intervalle sans les jours { $range } W
# { $shown }: those with most power.
comparison-first-only = Les { $shown } premières sur { $campaigns } sont montrées ; toutes sont dans le fichier de données.
section-heating = Durées de chauffage
heating-title = { $load } d’eau de { $start } à { $target } sous { $irradiance } W/m²
heating-note = D’après le bilan thermique de chaque campagne sous { $irradiance } W/m², dans un air à { $ambient } pour toutes, avec son intervalle à 95 % ; la chaleur de la marmite elle-même n’est pas comptée. Une flèche : l’intervalle se poursuit au-delà de l’axe, ou l’eau risque de ne pas y arriver.
heating-note-one-day = D’après le bilan thermique de chaque campagne sous { $irradiance } W/m², dans un air à { $ambient } pour toutes, avec son intervalle (à 95 %, sauf s’il est d’un seul jour) ; la chaleur de la marmite elle-même n’est pas comptée. Une flèche : l’intervalle se poursuit au-delà de l’axe, ou l’eau risque de ne pas y arriver.

## Comparison: what a reader must know first

# "The first" is the campaign that was named first.
departure-procedure = procédure { $here } là où la première a { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = { $limit } { $here } là où la première a { $there }
# The same on paper. { $limit }: one of those that begin with limit-. { $here }, { $there }: with
# their units, or departure-none.
departure-limit-said = { $limit } { $here } au lieu de { $there }
departure-least-said = { $limit } au moins { $here }
departure-most-said = { $limit } au plus { $here }
departure-none-said = aucune limite pour : { $limit }
departure-procedure-said = procédure { $here } au lieu de { $there }
departure-guard-said = limites avec bande de garde
departure-no-guard-said = limites sans bande de garde
departure-none = aucune
# What a reader must know first: a label, and what is said. { $campaigns }: one or two titles, or
# calls-numbers.
page-caveats = Avant de s’y fier
caveat-not-valid = Non valide
caveat-not-valid-text = { $campaigns } : l’eau gagnerait plus de chaleur que le rayonnement solaire reçu par le cuiseur. Vérifier la surface de captation, la charge et les unités. Pas de rang, et aucune différence de résultats n’est donnée.
caveat-no-rating = Sans résultat
caveat-no-rating-text = { $campaigns } : seuls les autres chiffres peuvent être comparés.
caveat-indicative = Indicatif seulement
caveat-indicative-text = { $campaigns }. Une différence avec une telle campagne n’est pas plus fiable que son résultat.
caveat-few-days = Peu de jours
caveat-few-days-text = { $campaigns } : intervalles retenus d’un ou deux jours ; on ne sait donc guère combien les jours diffèrent.
caveat-limits = Limites
# { $first }: calls-name of the campaign that was named first. caveat-limits-one of the others
# follow.
caveat-limits-text = Évalués selon d’autres limites que { $first }, et comparés malgré tout.
# { $departures }: some of departure-…-said, with ";" between them.
caveat-limits-one = { $campaigns } : { $departures }.
# As in English
caveat-irradiance = Irradiance
# { $ways }: some of caveat-irradiance-one, or one caveat-irradiance-all, with ";" between them.
caveat-irradiance-text = Pas mesurée de la même façon : { $ways }.
# Follows it.
caveat-irradiance-uncovered = Les incertitudes ne couvrent pas ici un capteur posé à plat ou un plan non indiqué.
caveat-irradiance-same = Pour toutes les campagnes : { $ways }.
# { $way }: one of the next four.
caveat-irradiance-one = { $way } : { $campaigns }
# As in English
caveat-irradiance-all = { $way }
caveat-way-normal = capteur face au soleil
caveat-way-flat = capteur posé à plat
caveat-way-not-stated = plan non indiqué, pris comme face au soleil
caveat-way-estimated = estimée { $way }
# { $name }: a place or a person.
caveat-group = { $name } : { $campaigns }
caveat-sites = Lieux
caveat-sites-text = { $sites }. Le ciel, l’air et le vent n’étaient pas les mêmes.
caveat-testers = Opérateurs
# As in English
caveat-testers-text = { $testers }.
caveat-sensors = Capteurs
caveat-sensors-none = Aucune paire de campagnes ne donne un même id au capteur d’irradiance : aucune erreur des capteurs d’irradiance ne s’annule dans une différence.
# { $groups }: some of calls-numbers, with ";" between them.
caveat-sensors-text = Le même capteur d’irradiance, d’après son id : { $groups }. Dans toutes les autres différences, aucune erreur des capteurs d’irradiance ne s’annule.
# Follows either of the two, where irradiance was estimated.
caveat-sensors-one-sky = L’erreur des estimations faites de la même façon, sur un même site les mêmes jours, s’annule tout de même.

## Comparison: the figure


## Comparison: tables of page one

ratings-conforms = conforme
ratings-conforms-with-notes = conforme avec remarques
ratings-indicative = indicatif seulement
ratings-not-valid = non valide
ratings-no-rating = sans résultat
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
# As in English
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
# As in English
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – jamais)
heating-never = n’y arrive pas

## Comparison: caution on page one

caution-compared = Les surfaces chaudes et la vapeur brûlent, le foyer peut rendre aveugle et allumer des incendies, et ces résultats ne disent rien de la sécurité des aliments. Lisez les mises en garde de la section { $section } avant de cuisiner. Les règlements locaux et la pratique des professionnels habilités passent en premier.

## Comparison: differences

section-differences = La différence et ce sur quoi elle repose
# Labels, with little room.
difference-verdict = différence
# As in English
difference-p = p
difference-method = dispersion et jours
# A difference with its 95 % interval, in watts.
difference-with-interval = { $difference } (95 % : { $interval })
difference-with-interval-one-day = { $difference } (pas à 95 % : { $interval })
# Whether the difference is real.
difference-apart = chacun par ses propres jours
difference-paired = appariés par jour, { $days ->
        [one] { $days } jour
       *[other] { $days } jours
    }
difference-real = réelle
difference-not-shown = non démontrée
# In place of real and not shown, where irradiance differed.
difference-scaled = autre irradiance
# The same where the plane of irradiance differed.
difference-planes = autre plan
# As in English
difference-of-ratings = Ps(50)
difference-of-common = puissance à 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = Incertitude de la différence : { $figure }
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
# As in English
page-comparison-source = source
page-comparison-shared = dans la différence
page-comparison-apart = si rien n’était commun
pair-budget-scatter = dispersion et jours
pair-budget-combined = composée
pair-budget-expanded = élargie, 95 %, k = { $factor }
pair-budget-expanded-one-day = élargie, sans les jours et non à 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = Les campagnes
page-campaigns-alike = Identique dans toutes les campagnes
# As in English
campaigns-type = type
campaigns-tests = Cuiseurs et essais
campaigns-area = surface de captation
campaigns-mass = masse
campaigns-cost = coût
campaigns-dates = dates
campaigns-runs = séries
campaigns-place = lieu
campaigns-tester = opérateur
campaigns-report = rapport
campaigns-results = Droites, bilans thermiques, conditions
# a and b are symbols; Ps and Td too.
campaigns-line = Droite Ps = a − b·Td
# As in English
campaigns-intercept = a, W
# As in English
campaigns-slope = b, W/K
campaigns-range = de – à
# As in English
campaigns-r-squared = R²
campaigns-intervals = intervalles
campaigns-days = jours
campaigns-balance = Bilan thermique, avec ±
# As in English
# As in English
campaigns-gain = gain, m²
campaigns-loss = perte, W/K
campaigns-power = W à 700 W/m², 50 K
campaigns-around = Moyennes des intervalles retenus
# As in English
campaigns-sun = W/m²
campaigns-air = air
campaigns-wind = vent
# Below or in place of a table of instruments.
campaigns-instruments-described = Chaque ligne est une description, qui peut valoir pour plusieurs instruments : ce n’est qu’avec un id entre parenthèses que c’est un seul et même instrument dans toutes ses campagnes.
campaigns-instruments-many = { $count } instruments en tout : chacun figure dans le rapport de sa campagne.
campaigns-all = Toutes
comparison-not-stated = sans indication

## Comparison: method and provenance

section-method = Méthode et provenance
page-comparison-made-with = Réalisé avec
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 pour chaque résultat ; JCGM 100:2008 pour les différences
comparison-note-ratings = Chaque résultat est celui de la norme : Ps(50), lu sur la droite à Td = 50 K. Il met la puissance à l’échelle de 700 W/m², pertes comprises. Quand l’irradiance moyenne des deux essais est semblable, la différence dite réelle ou non démontrée est celle des résultats.
comparison-note-suns = Quand l’irradiance moyenne diffère de plus de { $percent } %, c’est la différence des puissances à 700 W/m² et 50 K d’après les bilans thermiques. Un bilan thermique est P = g·G − u·Td, ajusté à tous les intervalles dont les relevés sont fiables. Il suppose que le gain g et la perte u sont les mêmes sous les deux irradiances ; le vent n’est pas corrigé.
comparison-note-planes = Quand l’irradiance de l’un est dans un autre plan que celle de l’autre, aucune différence n’est dite réelle ou non démontrée : ni les résultats ni les gains par W/m² ne sont alors comparables.
comparison-note-uncertainty = L’incertitude d’une différence comprend la dispersion et les jours des deux campagnes, chacune en laissant de côté un jour à la fois, et ce que leurs instruments n’ont pas en commun. Les instruments sont les mêmes quand les fichiers de campagne donnent un même id ; ceux sans id comptent comme différents, ce qui agrandit l’incertitude. L’erreur d’une estimation de l’irradiance n’est qu’une seule erreur quand les deux ont été estimés de la même façon, sur un même site les mêmes jours. La chaleur massique est commune à tous.
comparison-note-paired = Quand les deux ont été soumis à l’essai les mêmes jours sur un même site, pendant trois jours ou plus, chaque jour est laissé de côté pour les deux à la fois, si bien que ce qu’un jour fait aux deux s’annule : ici dans { $paired } sur { $pairs ->
        [one] { $pairs } paire
       *[other] { $pairs } paires
    }.
comparison-note-p = p est la probabilité d’une différence aussi grande s’il n’y en a aucune (t de Student, Cochran & Cox) ; le p corrigé tient compte de { $pairs ->
        [one] { $pairs } paire comparable
       *[other] { $pairs } paires comparables
    } par la méthode de Holm. Les deux sont ceux de la différence qui décide : celle des résultats, ou celle des puissances à 700 W/m². Une différence est dite réelle quand le p corrigé est inférieur à 0,05 et que les deux ont été soumis à l’essai sur plusieurs jours.
comparison-note-groups = Des campagnes qui ne se distinguent pas ne sont pas forcément semblables : la première peut ne pas se distinguer de la deuxième, ni la deuxième de la troisième, alors que la première et la troisième diffèrent. Les groupes sont ceux de l’affichage compact par lettres (Piepho 2004, Journal of Computational and Graphical Statistics 13, 456–466) : parmi les campagnes comparables entre elles, directement ou par l’intermédiaire d’autres, deux ont un groupe en commun exactement quand elles ne se distinguent pas, ne sont pas comparables ou n’ont pas chacune des essais sur plusieurs jours.
comparison-note-causes = Les causes découlent des différences de g et de u, chacune avec dispersion, jours et instruments. Une cause est nommée quand une différence est réelle et que le p de g ou de u est inférieur à 0,05 ; ces p ne sont pas corrigés du nombre de paires.
comparison-note-needed = Jours encore nécessaires : pour quatre chances sur cinq de démontrer à 95 % une différence de cette taille, si les jours et la dispersion restent tels qu’ils ont été observés.
comparison-note-reports = Chaque résultat a son propre rapport, avec ses relevés, ses conditions et son bilan.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
# As in English
plan-day = { $weekday } { $date }
# On the terminal; { $day }: plan-day, { $title }: the campaign's.
plan-title = { $day } : { $title }
plan-title-none = { $day } : aucune heure de ce jour ne peut servir, il n’y a donc pas de feuille de terrain. { $title }
# Labels of lines on the terminal, and headers of its table of the sun: there is little room.
plan-run = série
plan-lacks = manque
plan-place = lieu
plan-place-text = { $site }, heure de { $zone }
plan-elevation = hauteur, °
plan-azimuth = azimut, °
# As in English
plan-normal = normal, W/m²
# As in English
plan-horizontal = horizontal, W/m²
# As in English
plan-range = 95 %, { $unit }
plan-range-one-day = intervalle, { $unit }
plan-power = puissance, W
plan-not-rated = prévu comme pour un premier jour, car les fichiers de mesures ne donnent pas encore de résultat
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
plan-load-one = { $load } : { $each } par m² de surface de captation ({ $area }), dans un récipient
plan-load-several = { $load } : { $each } par m² de surface de captation ({ $area }), { $vessel } dans chacun des { $vessels } récipients
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
plan-read = relevés
plan-end = fin
plan-high-sun = soleil haut
# { $clocks }: two times of day. { $from }, { $to }: the same by the sun.
plan-high-sun-text = { $clocks } à l’horloge ({ $from } à { $to } en heure solaire), quand le soleil est haut et change le moins ; pratique courante, sans source publiée
plan-high-sun-most = jusqu’à { $highest } W/m² dans le plan normal au rayonnement direct
plan-high-sun-weak = au plus { $highest } W/m² dans le plan normal au rayonnement direct : un palier ne vaut qu’au-dessus de { $least } W/m², choisissez donc un autre jour pour cela
plan-high-sun-none = au plus { $highest } W/m² dans le plan normal au rayonnement direct : aucune heure de ce jour ne convient
plan-dry-begin = avec le récipient vide et sec, aussi froid que l’air, couvercle mis, le cuiseur orienté
plan-dry-read = le récipient toutes les 5 à 20 min, l’air au moins une fois sur deux, jusqu’à ce que le récipient n’ait plus changé pendant une demi-heure ; pendant une heure avec un cadran à pas de 10 °F ou de 5 °C
plan-dry-read-sun = le récipient et l’irradiance toutes les 5 à 20 min, l’air au moins une fois sur deux, jusqu’à ce que le récipient n’ait plus changé pendant une demi-heure ; pendant une heure avec un cadran à pas de 10 °F ou de 5 °C
plan-cooling-load = autant que dans les séries de chauffage, { $load }
plan-cooling-load-unstated = autant que dans les séries de chauffage ; pesez-la
plan-cooling-begin = avec l’eau près de bouillir (elle bout ici à { $boiling }), couvercle mis, le cuiseur à l’ombre ou détourné du soleil
plan-cooling-read = l’eau toutes les { $minutes } min, l’air au moins une fois sur deux ; l’irradiance n’est pas nécessaire
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = quand l’eau est à { $difference } au-dessus de l’air, par exemple { $end } dans un air à { $air }
# To turn the cooker to the sun.
plan-aim = orienter
plan-aim-unknown = le demi-angle d’acceptance n’est pas indiqué, aucune heure n’est donc donnée. Pratique courante, sans source publiée : un réflecteur peu profond à nombreuses facettes toutes les 45 minutes environ, pendant lesquelles le soleil se déplace d’environ 11°, une parabole à foyer net toutes les 10 à 15.
plan-aim-no-time = aucune heure de ce jour ne peut servir
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = à { $clocks } seulement : { $angle }° suffisent pour toute la fenêtre
plan-aim-drive = en continu, par un entraînement motorisé : le soleil se déplace de { $angle }° en moins de { $time }
plan-aim-at = à { $clocks } ; le soleil se déplace de { $angle }°, le demi-angle d’acceptance, pendant ce temps ({ $minutes } min)
plan-aim-every = toutes les { $minutes } min à partir de { $first } ; le soleil se déplace de { $angle }°, le demi-angle d’acceptance, pendant ce temps
plan-aim-shown = { $when }. L’angle n’est pas indiqué : c’est la borne inférieure de ce que montrent les séries jusqu’ici, { $shown }

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
    } au plus ; un chauffage de cette charge en donne environ { $heating }, puis recommencez avec de l’eau fraîche.

## Field sheet: before the first reading

check-shade = pas d’ombre sur le cuiseur jusqu’à la fin
check-wind = vent faible : la fumée dérive, les feuilles ne bougent pas
check-weighed = eau pesée, non versée à la tasse
check-sensor = capteur dans l’eau, à 10 mm au-dessus du fond, sans toucher la paroi
check-lid = couvercle mis, et il reste en place
check-air = thermomètre de l’air à l’ombre, hors de la lumière du cuiseur
check-irradiance = capteur d’irradiance propre et tourné vers le soleil
check-irradiance-flat = capteur d’irradiance propre et posé à plat, à côté du cuiseur
check-aimed = cuiseur orienté, et rien qui brûle près du foyer
check-empty = récipient vide, sec et propre : ni eau, ni aliment, ni graisse
check-no-plastic = ni plastique ni revêtement antiadhésif : il dépasse de loin 100 °C
check-dial = thermomètre dans ou sur le récipient, hors du faisceau ; il y reste
check-mirrors = miroirs de la boîte couverts ou repliés, pour ses facteurs de mérite
check-no-sun = pas de soleil sur le cuiseur jusqu’à la fin : à l’ombre ou détourné
check-in-place = récipient à sa place dans le cuiseur, comme quand il chauffe
# Lines to write on.
sheet-tester = opérateur
sheet-weighed = eau pesée, { $unit }
sheet-began = premier relevé, heure

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = heure
# As in English.
# As in English
sheet-after = minutes
sheet-vessel = récipient, { $unit }
sheet-water = eau, { $unit }
# As in English
sheet-air = air, { $unit }
# Bft: Beaufort.
sheet-wind = vent, Bft
sheet-sky = ciel : clair ou nuage
sheet-irradiance = irrad., W/m²
sheet-expected = attendu, { $unit }
sheet-aim = orienté
sheet-notes = remarques

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Vent à vue, Beaufort (WMO-No. 8) : { $forces }.
# As in English
sheet-force = { $number } { $sign } ({ $speeds })
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
# { $spread }: "95 %", or plan-spread-one-day.
plan-expected = Prévision d’après le résultat à ce jour, Ps(50) = { $power } W ± { $expanded } W ({ $spread }) : { $load } chauffés à partir de { $start } sous un ciel clair, dans un air à { $air } comme lors des essais du cuiseur ; avec son intervalle. Une eau nettement plus froide que prévu indique de la brume, du vent, une mauvaise orientation ou un couvercle mal fermé.
# As in English
plan-spread = 95 %
plan-spread-one-day = pas à 95 %
# The models behind the numbers.
plan-models = Ciel clair d’après Ineichen et Perez 2002 pour { $elevation }, trouble de Linke { $turbidity } (habituel pour un ciel clair) ; brume et poussière donnent moins. Soleil d’après NREL/TP-560-34302 ; un horizon plat.
plan-models-stated = Ciel clair d’après Ineichen et Perez 2002 pour { $elevation }, trouble de Linke { $turbidity } (comme indiqué) ; brume et poussière donnent moins. Soleil d’après NREL/TP-560-34302 ; un horizon plat.
page-sheet-checks = Avant le premier relevé
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = À noter à chaque relevé
page-sheet-caution = Attention.
caution-field-sheet = Ne regardez jamais dans le foyer ni vers le soleil. Le métal chaud et la vapeur brûlent : gants, couvercle écarté de vous. Éloignez les enfants et tout ce qui brûle ; restez près du cuiseur ; détournez-le du soleil avant d’y mettre les mains ; attachez-le contre le vent. De l’ombre et de l’eau pour vous. Jetez l’eau de l’essai. Les règlements locaux et la pratique des professionnels habilités passent en premier.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = Un récipient sec dépasse de loin 100 °C : il brûle dès qu’on le touche, et reste chaud longtemps après. Le plastique fond et les revêtements dégagent des fumées : ni l’un ni l’autre. N’y versez jamais d’eau tant qu’il est chaud : elle gicle et il se fend. L’herbe sèche, le tissu et les restes de graisse prennent feu : sol nu, de l’eau ou du sable à portée de main, et quelqu’un qui reste. Ne regardez jamais dans le foyer ni vers le soleil ; détournez-en le cuiseur avant d’y mettre les mains ; gants secs. Éloignez les enfants ; attachez-le contre le vent. De l’ombre et de l’eau pour vous. Les règlements locaux et la pratique des professionnels habilités passent en premier.
caution-field-sheet-cooling = On porte un récipient d’eau presque bouillante : chemin dégagé, personne dessus, couvercle tenu, les deux mains dans des gants secs ; mieux vaut le poser que se presser. La vapeur brûle : couvercle écarté de vous. Ne regardez jamais dans le foyer ni vers le soleil ; détournez-en le cuiseur, ou mettez-le à l’ombre, avant d’y mettre les mains, et voyez où va alors le foyer. Éloignez les enfants ; restez près du cuiseur. Jetez l’eau de l’essai. Les règlements locaux et la pratique des professionnels habilités passent en premier.

## Kinds of run, and what vessels store

run-kind-water = chauffage d’eau
run-kind-cooling = refroidissement, à l’ombre
run-kind-dry = récipient à sec
vessel-heat-stated = indiquée dans le fichier de campagne
vessel-heat-weighed = { $mass }, { $material }, à { $heat } J/(kg K) (EN 12524:2000, telle que la reprend une bibliothèque logicielle libre)
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
tested-no-water = aucune : aucune série de cette campagne ne chauffe d’eau
tested-vessel-temperature = température du récipient
error-vessel-temperature = thermomètre du récipient
error-vessel-heat = capacité thermique des récipients
known-vessel-heat = à { $percent } % près de la valeur indiquée
budget-not-told-apart = non détaillée dans ce rapport
tested-instruments-note-dry = Incertitudes-types (k = 1) ; pour une classe, ses limites. Là où ni l’une ni l’autre n’est indiquée, la classe la plus prudente est supposée : un cadran de four à ± 10 K près pour le récipient (pratique courante).

## Page one of a campaign that heats no water

report-kind-without-water = Rapport d’essai de cuiseur solaire : sans résultat
headline-label-none = Pas encore de chiffre
headline-no-water = Sans résultat selon ASAE S580.1 : aucune série de cette campagne ne chauffe de l’eau.
headline-spread = Intervalle à 95 % : jours, relevés, instruments.
headline-spread-one-day = Intervalle sans les jours : relevés, instruments ; pas à 95 %.
headline-dry-plateau = Sous { $irradiance } W/m², le récipient vide est monté à { $vessel } : { $difference } au-dessus de l’air à { $ambient }.
fact-reached = Il a atteint
fact-good-for = Sert à
fact-not-with = À ne pas comparer à
headline-no-water-means = Rien de tout cela n’est une puissance de cuisson. Chauffez une charge d’eau pesée pour savoir à quelle vitesse le cuiseur cuit.
headline-nothing-drawn = Rien n’a pu être tracé : les écarts constatés disent pourquoi.

## All figures at a glance (page two)

summary-title = Tous les chiffres d’un coup d’œil
# Headers of a table of four columns.
page-summary-figure = chiffre
page-summary-value = valeur ± demi-largeur
page-summary-good-for = sert à
page-summary-not-with = à ne pas comparer à
summary-one-day = (pas à 95 %)
summary-indicative = (indicatif)
summary-note = Chaque ± vaut pour 95 % : jours, relevés (avec leur dispersion là où une droite est ajustée) et instruments, avec l’incertitude indiquée ou supposée. Les surfaces comptent comme exactes.
# The same where figures without days are among them; the next message follows it.
summary-note-some = Chaque ± vaut pour 95 %, sauf là où il est écrit « pas à 95 % » : jours, relevés (avec leur dispersion là où une droite est ajustée) et instruments, avec l’incertitude indiquée ou supposée. Les surfaces comptent comme exactes.
summary-note-one-day = Là où il est écrit « pas à 95 % », la variation d’un jour à l’autre n’est pas dans le ±, qui ne vaut donc pas pour 95 %.
summary-note-indicative = Là où il est écrit « indicatif », les conditions de la méthode n’étaient pas remplies, ou l’irradiance est estimée.
figure-ps50 = puissance de cuisson normalisée
figure-ps50-good-for = comparer des cuiseurs évalués selon la même norme
figure-ps50-not-with = la puissance sous une autre irradiance, ou des résultats selon une autre norme
figure-gain = gain solaire
figure-gain-good-for = dire la puissance à toute irradiance, avec u
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
figure-peak-exergy-not-with = des pics sous une autre irradiance
figure-quality-factor = facteur de qualité
figure-quality-factor-good-for = comparer gain et perte au pic
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
procedure-spread = ± pour 95 % : jours, relevés, instruments
procedure-spread-one-day = ± sans les jours, pas à 95 % : relevés, instruments
page-procedure-quantity = grandeur
procedure-boiling = La durée jusqu’à l’ébullition vaut pour { $load } d’eau de { $ambient } à { $boiling }, son point d’ébullition ici, sous une irradiance constante de { $irradiance } W/m² : les moyennes de l’essai. Elle est calculée, non chronométrée.
# { $limit }, °C.
evaporation = au-dessus de { $limit }, une part de la chaleur passe dans la vapeur, ce qu’aucune température ne montre : les chiffres valent pour un couvercle fermé et comptent la vapeur comme perte
evaporation-remedy = garder le couvercle fermé ; ne comparer que des essais qui finissent à des températures semblables

## Dry vessel

section-dry-vessel = Récipient à sec
dry-what = Un récipient vide et sombre, ou une plaque nue, est laissé au soleil jusqu’à ce qu’il ne chauffe plus. Sa température au-dessus de l’air, par W/m², met l’énergie solaire reçue en regard des pertes. Ce n’est pas une puissance de cuisson.
dry-plane-normal = L’irradiance est celle d’un capteur tourné vers le soleil.
dry-plane-horizontal = L’irradiance est celle d’un capteur posé à plat : ne comparez qu’avec des valeurs d’un capteur posé à plat.
dry-plane-estimated = L’irradiance est estimée.
dry-plane-not-stated = Le plan du capteur d’irradiance n’est pas indiqué : ne comparez avec aucune autre valeur.
# { $runs }: more than one.
dry-mean-of = La valeur est la moyenne de { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
} avec un palier.
# Headers of a table with a row a run: there is little room.
dry-head-run = série
dry-head-plateau = palier, { $unit }
# As in English
dry-head-ambient = air, { $unit }
dry-head-irradiance = soleil, W/m²
# As in English
dry-head-difference = K m²/W
dry-head-initial = montée init., K/min
dry-head-reached = min jusqu’à { $level }
dry-caption = Température du récipient à sec depuis le début de chaque série ; trait épais : le palier.
dry-alt = Courbes de la température du récipient à sec selon le temps, pour { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
}. Le relevé le plus élevé est { $highest }.
dry-axis-time = temps depuis le premier relevé, min
dry-axis-vessel = récipient, { $unit }
dry-key-vessel = relevés
dry-key-plateau = palier
dry-source = Palier, selon l’interprétation de ce projet : la période la plus chaude d’au moins dix minutes, plus longue pour un cadran grossier, pendant laquelle le récipient monte ou descend de moins de 0,1 K/min, et le soleil reste à ± 20 W/m² près et au-dessus de 600 W/m². Le rapport est celui que Mullick, Kandpal et Saxena 1987 emploient pour les cuiseurs boîtes. Montée initiale : sur les dix premières minutes, ou les deux premiers relevés.
dry-no-vessel = le fichier de mesures n’a pas de température du récipient
dry-no-vessel-remedy = nommer la colonne du récipient sous [columns], comme vessel_temperature ; si le récipient contenait de l’eau, écrire kind = "water"
dry-no-irradiance = le fichier de mesures n’a pas d’irradiance, le palier ne peut donc pas être rapporté au soleil
dry-no-irradiance-remedy = noter l’irradiance à chaque relevé, ou indiquer des périodes sans nuages et estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = les relevés qui comptent ne couvrent pas { $minutes } min sans trou, ce qu’il faut pour un palier avec ce thermomètre
dry-too-short-remedy = continuer les relevés, au moins toutes les vingt minutes, jusqu’à ce que la température soit restée la même pendant { $minutes } min
dry-sun-unsteady = le soleil n’est jamais resté à ± 20 W/m² de sa moyenne pendant { $minutes } min
dry-sun-unsteady-remedy = faire l’essai sous un ciel clair autour du midi solaire
dry-sun-weak = le soleil était régulier, mais avec au plus { $highest } W/m², en dessous de 600 W/m²
dry-sun-weak-remedy = faire l’essai autour du midi solaire, dans une saison plus lumineuse, ou sans brume
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = pas de palier : dans sa période régulière la plus chaude, à { $vessel }, le récipient montait encore de { $rate } K/min
dry-still-falls = pas de palier : dans sa période régulière la plus chaude, à { $vessel }, le récipient descendait de { $rate } K/min
dry-still-moves-remedy = commencer plus tôt, réorienter, et continuer jusqu’à ce que la température reste la même

## Box cooker

section-box-cooker = Facteurs de mérite d’un cuiseur boîte
box-what = F1 = (Tp − Ta)/H : température de la boîte vide au-dessus de l’air, par W/m² dans le plan horizontal. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))] : à quel point sa chaleur passe dans une pleine charge, d’après le temps τ pendant lequel l’eau monte de ΔT ; T, Ta et H sont des moyennes sur ce temps.
box-grade = classe
box-grade-a = A : toute la plage de F1 est au-dessus de { $limit } K m²/W (IS 13429)
box-grade-none = aucune : la plage de F1 n’est pas entièrement au-dessus de { $limit } K m²/W, la limite de la classe A (IS 13429) ; les classes inférieures ne sont pas évaluées
box-rests-on-dry = F1 repose sur { $runs ->
    [one] { $runs } série à sec
   *[other] { $runs } séries à sec
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
box-axis-water = eau, { $unit }
box-key-water = relevés
box-key-told = d’après F1 et F2
box-source = Mullick, Kandpal et Saxena 1987 (Solar Energy 39, 353–360) et IS 13429. Ils écrivent F2 avec le logarithme des deux bouts : la même chose sous un soleil constant, et jusqu’à 2 % d’écart sous un soleil qui change d’un dixième, davantage là où F1·H est proche de la fin de la montée (simulé). Ils comptent l’ébullition à 100 °C, ce rapport au point d’ébullition local. Aucun seuil n’est donné pour F2 : deux sont cités, et ils se contredisent.
box-no-dry-run = il n’y a pas de série à sec, donc pas de F1, ni de F2 qui repose dessus
box-no-dry-run-remedy = laisser la boîte vide au soleil vers midi et enregistrer la température de sa plaque : kind = "dry"
box-no-plateau = aucune série à sec n’a de palier, il n’y a donc pas de F1, ni de F2
box-no-plateau-remedy = voir ce qui manque aux séries à sec
box-plane-normal = l’irradiance a été mesurée face au soleil ; F1 et F2 sont définis pour un capteur posé à plat
box-plane-not-stated = le plan du capteur d’irradiance n’est pas indiqué ; F1 et F2 sont définis pour un capteur posé à plat
box-plane-estimated = l’irradiance est estimée ; F1 et F2 sont définis pour un capteur posé à plat
box-plane-remedy = poser le capteur à plat à côté de la boîte, et indiquer plane = "horizontal"
box-cover-mirrors = F1 et F2 valent pour une boîte dont les miroirs d’appoint, si elle en a, sont couverts ; aucun fichier de mesures ne le montre
box-cover-mirrors-remedy = les couvrir pendant ces séries, et le dire dans les remarques
box-no-water-run = aucune série ne chauffe d’eau, il n’y a donc pas de F2
box-no-heating = pas de montée de { $from } à { $to } °C sans trou, avec irradiance, dans { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
} à l’eau, il n’y a donc pas de F2
box-no-heating-remedy = commencer en dessous de { $from }, continuer au-dessus de { $to }, et faire un relevé au moins toutes les vingt minutes
box-runs-left-out = séries à l’eau sans montée entière de { $from } à { $to } °C, non retenues : { $runs }
# Loads in kg/m².
box-load-off = la charge était de { $load } ; une pleine charge est d’environ { $full }
box-load-off-remedy = peser { $full } kg d’eau par m² de vitrage ; la puissance de cuisson normalisée demande 7 kg par m² de surface de captation, une seule charge ne satisfait donc pas toujours les deux
# Both in K.
box-beyond-reach = dans { $rises ->
    [one] { $rises } montée
   *[other] { $rises } montées
}, l’eau est arrivée à { $end } au-dessus de l’air, plus que ce F1 ne permet : F1·H y vaut { $reach }. Une telle montée n’est pas retenue
box-no-upper-end = F1·H vaut { $reach }, si près des { $end } dont la fin de la montée de l’eau est au-dessus de l’air que F2 n’a pas de borne supérieure
box-near-reach = la fin de la montée de l’eau, { $end } au-dessus de l’air, est proche de F1·H, { $reach } : un F1 plus bas de 1 % rend F2 plus haut de { $more } %
box-reach-remedy = faire l’essai sous un soleil plus fort, ou finir la montée plus bas
box-one-day = les séries à sec ou les montées sont d’un seul jour, les plages ne sont donc pas à 95 %
box-one-day-remedy = refaire l’essai d’autres jours

## Concentrating cooker

section-dish = Essai de refroidissement et de chauffage
dish-what = À l’ombre, la température de la charge au-dessus de l’air décroît avec la constante de temps τ0 ; sa perte est C/τ0, avec la capacité thermique C de l’eau et des récipients. F′UL est cette perte par m² de surface des récipients. Au soleil, F′η0 est la fraction du rayonnement sur la surface de captation que la charge absorbe, pertes non déduites.
dish-loss = perte dans l’air par refroidissement, F′UL·At
dish-rests-on-cooling = La perte repose sur { $runs ->
    [one] { $runs } série de refroidissement
   *[other] { $runs } séries de refroidissement
}, de { $from } à { $to }.
dish-rests-on-vessels = La capacité thermique des récipients est comprise, { $heat } J/K : { $basis }.
dish-rests-on-heating = Le facteur optique repose sur { $runs ->
    [one] { $runs } chauffage
   *[other] { $runs } chauffages
}, chacun de { $margin } au-dessus de l’air à { $margin } en dessous de l’ébullition, aussi loin qu’il va.
dish-caption = Eau au-dessus de la température moyenne de l’air depuis le début de chaque série de refroidissement ; trait épais : ce que donne sa constante de temps dans un air constant.
dish-alt = Courbes de la température de l’eau au-dessus de l’air selon le temps, pour { $runs ->
    [one] { $runs } série de refroidissement
   *[other] { $runs } séries de refroidissement
}, avec la courbe exponentielle. La constante de temps moyenne est de { $minutes } minutes.
dish-axis-time = temps depuis le premier relevé, min
dish-axis-difference = eau au-dessus de l’air, { $unit }
dish-key-water = relevés
dish-key-told = par la constante de temps
dish-source = Mullick, Kandpal et Kumar 1991 (Solar Energy 46, 139–144). Ils prennent la pente de ln(T − Ta) ; ce rapport prend celle de T selon l’intégrale de T − Ta : la même chose dans un air constant, et juste dans un air qui se réchauffe, où l’autre s’écarte de 2 à 9 % pour 1 K/h et des constantes de temps d’une à deux heures (simulé). Ils comptent l’ébullition à 100 °C, ce rapport au point d’ébullition local.
dish-no-cooling-run = il n’y a pas de série de refroidissement, donc ni constante de temps, ni perte, ni facteur optique
dish-no-cooling-run-remedy = laisser refroidir une charge chaude à l’ombre, et l’enregistrer : kind = "cooling"
dish-begins-too-cool = { $log } : l’eau commence à { $above } au-dessus de l’air, et une série de refroidissement à { $least } au moins ; elle n’est pas retenue
dish-begins-too-cool-remedy = commencer près de l’ébullition
dish-warms = { $log } : l’eau est devenue plus chaude de { $rise } qu’elle ne l’était avant, le soleil l’a donc atteinte, ou de l’eau chaude a été ajoutée ; cette série n’est pas retenue
dish-warms-remedy = détourner le cuiseur du soleil ou mettre toute l’ouverture à l’ombre
dish-cooling-too-short = { $log } : avant un trou de plus de vingt minutes ou une période exclue, il y a trop peu de relevés, ou une baisse de moins d’un cinquième de la température au-dessus de l’air du début ; cette série n’est pas retenue
dish-cooling-too-short-remedy = faire un relevé toutes les cinq minutes ou plus souvent, pendant une heure ou plus
dish-no-loss-area = la surface des récipients n’est pas indiquée, la perte n’est donc donnée qu’en W/K
dish-no-loss-area-remedy = indiquer loss_area_m2 sous [cooker] : parois et couvercle des récipients
dish-no-vessel-heat = la capacité thermique des récipients n’est pas indiquée, et n’est pas comprise : perte et facteur optique sont trop faibles de cette part
dish-no-vessel-heat-remedy = peser les récipients vides : vessel_mass_kg et vessel_material sous [load]
dish-no-heating = aucune série à l’eau n’a de montée de { $rise } avec irradiance, sans trou ni période exclue, il n’y a donc pas de facteur optique
dish-no-heating-remedy = enregistrer un chauffage d’au moins { $rise } au soleil, avec irradiance
dish-plane-not-normal = l’irradiance n’a pas été mesurée face au soleil, et le facteur optique vaut pour le rayonnement direct
dish-plane-estimated = l’irradiance est estimée, et le facteur optique prend celui du rayonnement direct
dish-plane-remedy = garder le capteur tourné vers le soleil, et indiquer plane = "normal"
dish-global-not-beam = un capteur tourné vers le soleil voit aussi le ciel qui l’entoure, dont un miroir à foyer ne se sert pas : avec lui, le facteur optique est plus bas que d’après le seul rayonnement direct, d’un dixième environ sous un ciel très clair, et d’un sixième ou plus dans la brume (pratique courante)
dish-global-not-beam-remedy = dire dans les remarques si le capteur ne voyait que le rayonnement direct
dish-no-end = dans l’incertitude des instruments, la plage de l’un des chiffres n’a pas de borne, et il n’est pas donné
dish-no-end-remedy = mesurer l’irradiance avec un capteur mieux connu, et indiquer son incertitude
dish-one-day = le refroidissement ou le chauffage est d’un seul jour, les plages ne sont donc pas à 95 %
dish-one-day-remedy = refaire l’essai d’autres jours

## Energy and exergy

section-efficiency = Énergie et exergie
efficiency-what = Rendement énergétique : chaleur absorbée par l’eau, sur le rayonnement solaire reçu par la surface de captation. Rendement exergétique : la même chose pour l’exergie, la part qui pourrait fournir du travail, où l’eau chaude compte plus que l’eau tiède. Pic d’exergie : le sommet de la parabole de l’exergie selon l’écart de température ; facteur de qualité : le pic sur l’exergie de la chaleur perdue à cet endroit.
# { $range } in °C.
efficiency-rests-on = Ils reposent sur { counted-intervals } aux relevés fiables, eau à { $range }, { $irradiance } W/m² en moyenne. La capacité thermique des récipients n’est pas comprise.
efficiency-peak-at = Le pic est à { $difference } au-dessus de l’air, sous le soleil de l’essai ({ $irradiance } W/m² en moyenne).
efficiency-caption = Exergie que l’eau gagne, intervalle par intervalle.
efficiency-caption-no-peak = Exergie que l’eau gagne, intervalle par intervalle. Il n’y a pas de pic parmi les intervalles.
efficiency-alt = Nuage de points de l’exergie en watts selon l’écart de température en kelvins, { counted-intervals }.
efficiency-axis-difference = écart de température, Td, { $unit }
efficiency-axis-exergy = exergie, W
efficiency-key-intervals = intervalles
efficiency-key-parabola = parabole
efficiency-source = Exergie du rayonnement solaire d’après Petela 1964 avec le soleil à 5777 K ; exergie de l’eau d’après le second principe. Comme Öztürk 2004 et d’autres ; les publications choisissent d’autres plages de température de l’eau, ne comparez donc qu’avec la plage ci-dessus. Pic et facteur de qualité d’après Kumar, Vishwanath et Gupta 2012 ; que la perte y soit l’exergie de la chaleur perdue, u·Td·(1 − Ta/T), avec le u de ce rapport, c’est l’interprétation de ce projet.
efficiency-plane = l’irradiance a été mesurée avec un capteur posé à plat : là où la surface de captation fait face au soleil, le rayonnement solaire est sous-estimé, et les rendements sont trop élevés
efficiency-plane-remedy = ne comparer qu’avec des essais dont le capteur était à plat
efficiency-no-peak = l’exergie n’a pas de point le plus haut parmi les intervalles, il n’y a donc ni pic ni facteur de qualité
efficiency-no-peak-remedy = faire l’essai de { $above } au-dessus de l’air jusque près de l’ébullition
efficiency-no-loss = la perte peut être nulle, il n’y a donc pas de facteur de qualité
efficiency-no-loss-remedy = faire des essais sur une plage plus large de températures de l’eau, et sur plus de jours
efficiency-one-day = toutes les données sont d’un seul jour, les plages ne sont donc pas à 95 %
efficiency-one-day-remedy = refaire l’essai d’autres jours

## Where no water heats

tested-method-none = aucune de la norme : aucune série ne chauffe de l’eau
tested-environment-dry = Environnement des paliers
tested-environment-cooling = Environnement des séries de refroidissement
tested-no-plateau = aucun palier

## On the terminal: the table of report, and what stands below it

# Headers of the table: there is little room.
terminal-campaign = campagne
# As in English
terminal-rating = Ps(50), W (95 %)
# As in English
terminal-r-squared = R²
terminal-used = retenus
terminal-days = jours
terminal-conformity = conformité
terminal-report = rapport
# Data that nobody measured.
terminal-invented = { $title } (inventé)
# What weakens a rating, each behind its level: "indicative only; horizontal sensor".
terminal-irradiance-not-measured = irradiance non mesurée
terminal-horizontal = capteur horizontal
terminal-plane-not-stated = plan du capteur non indiqué
terminal-one-day = un seul jour : ± n’est pas à 95 %
terminal-days-not-in-spread = dispersion entre jours hors du ± : pas à 95 %
terminal-extrapolated = extrapolé à 50 K
# Of several campaigns that share a note; { $names }: their names.
terminal-campaigns = { $count } campagnes ({ $names })
terminal-more = { $count } de plus
# In place of the campaigns above, before the first of several notes that are alike.
terminal-alike = { $campaigns } ; la première
terminal-alike-gravest = { $campaigns } ; le cas le plus grave, celui de la première
terminal-alike-times = { $campaigns }, { $count } fois ; la première
# Before a note below the table.
terminal-note = remarque
# A note, or what a campaign lacks, behind those that it is about; a cell behind its header.
terminal-whose = { $whose } : { $said }
terminal-left-alone =
    { $all ->
        [1] laissé tel quel : rien de ce sur quoi repose le rapport n’a changé ; --fresh le refait
       *[other] { $count } campagnes sur { $all } laissées telles quelles : rien de ce sur quoi reposent leurs rapports n’a changé ; --fresh les refait tous
    }
# A note on a campaign; { $names }: long logs.
terminal-kept-beside = { $names } n’est pas dans le PDF : remettez-le avec le rapport, ou faites le rapport avec --carry-all
# A note on a campaign; { $count }: how many files, { $names }: the first of them.
terminal-unnamed-logs = { $count ->
    [one] un fichier de son dossier ressemble à un fichier de mesures, et aucune série ne le nomme : { $names }
   *[other] { $count } fichiers de son dossier ressemblent à des fichiers de mesures, et aucune série ne les nomme : { $names }
}

## What check says of the other procedures

# The first line; { $level }: one of those that begin with level-, { $title }: the campaign's.
check-verdict = { $level } : { $title }
# { $caveats }: irradiance-estimated and the like.
check-verdict-with = { $level } ({ $caveats }) : { $title }
# Labels of the lines below it, and what stands beside them.
check-next = suite
check-so-far = à ce jour
check-aim = but
check-name = campagne
# The first line of several campaigns; { $levels }: "3 × conforms, 2 × cannot be read".
check-many = { $count } campagnes : { $levels }
check-unreadable = illisible
# Before what is to be done next in several campaigns; { $first }: the folder of the first of them.
check-campaigns = { $count } campagnes
check-campaigns-first = { $first } et { $others } de plus
check-next-unreadable = corriger les erreurs indiquées ci-dessous
# Of campaigns for whose next steps there is no room.
check-next-other = voir ci-dessous
check-next-reports = écrire les rapports : { $command }
# Header of a table.
check-folder = dossier
# Headings over what is said of several campaigns.
check-many-next = Que faire maintenant
check-many-findings = Ce qui empêche la conformité des campagnes, et comment y remédier
check-many-notes = À indiquer avec les chiffres
check-many-figures = Les autres grandeurs
check-shown = { $shown } campagnes sur { $count } sont affichées, d’abord les plus éloignées de la conformité.
check-shown-unreadable = { $shown } campagnes sur { $count } sont affichées : d’abord les illisibles ({ $unreadable }), puis les plus éloignées de la conformité.
check-shown-only-unreadable = { $shown } campagnes sur { $count } sont affichées, toutes parmi les { $unreadable } illisibles.
# { $one }: a command, { $whole } and { $json }: options.
check-whole = Une campagne en entier : { $one }. Toutes : { $whole }, ou { $json }
check-rating = Ps(50) = { $rating }, d’après { $used } sur { counted-intervals }, { counted-days }
check-no-number = sans résultat : { $used } sur { counted-intervals } peuvent être retenus
# { $none }: "no rating: there is no interval"; { $power }: "55 ± 12 W (not 95 %)".
check-so-far-balance = { $none } ; le bilan thermique donne { $power } à 700 W/m² et 50 K : indicatif, pas un résultat de la norme
check-none-used = sans résultat : { $intervals ->
    [0] il n’y a aucun intervalle
    [one] le seul intervalle ne peut pas être retenu
   *[other] aucun des { $intervals } intervalles ne peut être retenu
}
check-not-valid = aucun chiffre : l’eau gagnerait plus de chaleur que le rayonnement solaire reçu par le cuiseur ; plus d’intervalles n’y changent rien
# What to do next. { $command } stays as it is.
check-next-report = écrire le rapport : { $command }
# { $remedy }: what to do before more is measured.
check-next-then = { $remedy } ; puis { $missing }
# In place of the remedy above, where a notice doubts place or time.
check-next-note = regarder d’abord la remarque sur le site, une date ou une horloge, et corriger ce qui est faux
# { $next }: what to do; irradiance is estimated, which more of the same does not mend.
check-next-still = { $next } (restera indicatif sans un capteur d’irradiance tourné vers le soleil)
# Headers of the tables of runs: there is little room.
check-run = série
# As in English
check-date = date
check-readings = relevés
check-intervals = intervalles
check-used = retenus
check-aside = écartés
check-kind = type
check-from = de
check-to = à
# In the last column of the table, behind a number of intervals: two words at most.
aside-water-below-window = eau froide
aside-water-above-window = près de bouillir
# As in English
aside-ambient-out-of-range = air
aside-irradiance-low = soleil faible
aside-irradiance-high = soleil fort
aside-irradiance-unsteady = soleil instable
aside-wind-high = vent
aside-outside-solar-window = heure
aside-reading-gap = trous
aside-excluded-by-tester = exclus
aside-not-cloudless = ciel
# Headings.
check-findings = Écarts constatés et corrections
check-notes = À indiquer avec le chiffre
check-set-aside = Intervalles écartés, et ce qui aide
check-notices = Remarques
check-how-read = Lecture des fichiers de mesures
check-shared = donne { $keys }
check-shared-nothing = ne donne rien : des fichiers plus proches indiquent les mêmes clés
# Below the table. { $run }: its name, { $shortest }, { $longest }: minutes.
check-hole = { $run } : pas d’intervalle de { $from } à { $to } le { $date } : il n’y a pas là deux relevés de l’eau séparés de { $shortest } à { $longest } minutes
check-not-normalised = { $run } : { counted-intervals } sans irradiance, dans toutes les limites et non retenus
# What helps where intervals are set aside: what the person beside the cooker can do.
helps-water-below-window = commencer avec de l’eau à quelques degrés au-dessus de l’ambiante, ou la laisser se réchauffer avant qu’elle ne compte
helps-water-above-window = arrêter la série, ou recommencer avec de l’eau froide, quand l’eau approche de l’ébullition
helps-ambient-out-of-range = choisir une autre saison ou une autre heure du jour
helps-irradiance-low = attendre un ciel clair, et garder propre le verre du capteur
helps-irradiance-high = vérifier l’étalonnage du capteur, et le protéger de la lumière réfléchie
helps-irradiance-unsteady = faire l’essai des jours sans passages nuageux, et garder le capteur orienté
# In place of the three above where a model of the clear sky gives irradiance, and no sensor.
helps-irradiance-of-model = vérifier la latitude, la longitude et le fuseau horaire, dont le soleil est estimé, et faire l’essai plus près du midi solaire
helps-wind-high = faire l’essai à l’abri ou des jours plus calmes
helps-outside-solar-window = chauffer pendant la fenêtre, qui est en heure solaire
helps-reading-gap = enregistrer chaque grandeur au moins une fois par intervalle
helps-excluded-by-tester = rien, sauf si l’exclusion était une erreur
helps-not-cloudless = noter à chaque relevé si le ciel était sans nuages ; mesurer l’irradiance là où passent des nuages
# Behind helps-outside-solar-window.
helps-by-clock = { $helps } ; le { $date }, c’était de { $from } à { $to } à l’horloge
# Of several logs, { $what }: what is said of each of them.
check-of-logs = { $count } fichiers de mesures
check-figures = Autres chiffres à ce jour
check-no-figures = Aucun autre chiffre pour l’instant.
box-grade-one-day = aucune : F1 est au-dessus de { $limit } K m²/W (IS 13429), mais d’un seul jour, et un autre peut être plus bas
box-grade-not-flat = aucune : l’irradiance n’a pas été mesurée avec un capteur posé à plat, pour lequel vaut la limite, { $limit } K m²/W (IS 13429)
box-glass = Le vitrage est de { $area }, comme indiqué.
box-glass-not-stated = La surface de captation, { $area }, est prise comme celle du vitrage. Si elle comprend des miroirs, F2 est trop bas : indiquez la surface du vitrage.
box-beyond-reach-remedy = F1 est trop bas, ou le capteur a trop peu indiqué dans cette série : vérifier que le palier a été atteint, que les miroirs étaient couverts de la même façon, et que le capteur était à plat
boiling-gets-to = pas de durée jusqu’à l’ébullition : sous le soleil de l’essai, l’eau arrive à { $highest }, et elle bout à { $boiling }
boiling-may-not = pas de durée jusqu’à l’ébullition : dans l’incertitude des chiffres, il se peut que l’eau n’arrive pas à { $boiling }, où elle bout
boiling-remedy = faire l’essai sous un soleil plus fort, ou améliorer le cuiseur
dish-runs-left-out = séries à l’eau sans montée de { $rise } au soleil qui n’ait ni trou ni période exclue, non retenues : { $runs }
dry-no-ambient = l’air n’a pas été relevé à moins de deux heures des périodes régulières
dry-no-ambient-remedy = relever l’air au moins une fois sur deux
dry-may-get-hotter = sur son palier, le récipient montait encore de { $rate } K/min : d’après sa montée initiale, il peut finir { $more } plus chaud
dry-no-end = la différence par W/m² n’est pas donnée : dans l’incertitude de l’irradiance, sa plage n’a pas de borne
efficiency-peak-unsure = le pic n’est pas donné : il n’y en a pas sans l’un des jours, ou dans l’incertitude des instruments
efficiency-peak-unsure-remedy = faire des essais sur plus de jours, chacun de { $above } au-dessus de l’air jusque près de l’ébullition
efficiency-too-much = l’eau a absorbé plus de chaleur que le rayonnement solaire sur la surface de captation, ce qui ne se peut pas
efficiency-too-much-remedy = vérifier la surface de captation, la charge et les unités
tested-instruments-note-cooling = Incertitudes-types (k = 1) ; pour une classe, ses limites. Là où ni l’une ni l’autre n’est indiquée, la classe la plus prudente est supposée (pratique courante).

## Comparison: figures beside the rating

section-beside = Chiffres en complément du résultat
# A list of several campaigns for each figure: headers, and cells. Numbers are those of campaigns.
beside-head-value = valeur
beside-head-apart = distingué de
beside-from-none = aucun
# A cell: how many of those that it is compared with.
beside-from-so-many = { $apart } sur { $compared }
# { $reasons }: some of beside-not-compared-why, with ";" between them.
beside-not-compared-list = Non comparés : { $reasons }.
# { $pairs }: some of beside-not-compared-with, with ";" between them.
# As in English
beside-not-compared-why = { $pairs } ({ $why })
# Numbers of campaigns.
beside-not-compared-with = { $one } avec { $others }
beside-pairs = { $count ->
        [one] { $count } paire
       *[other] { $count } paires
    }
# { $numbers }: "2, 5–7".
beside-list-note = Chaque ± vaut pour 95 %, sauf là où il est écrit « { beside-one-day } ». Ce que des campagnes ont en commun s’annule dans une différence ; deux chiffres dont les plages se recouvrent peuvent donc quand même différer. Les chiffres dont aucune paire n’est comparée sont dans le fichier de données.
beside-first-only = De chaque chiffre, les { $shown } premiers sont montrés, sur { $campaigns } campagnes en tout ; toutes les paires sont dans le fichier de données.
# A title where there is no rating.
beside-title = Chiffres de { $count } campagnes comparés
beside-title-none = Aucun chiffre de ces { $count } campagnes n’est comparable
# { $name }: the campaign with which all others were to be compared.
beside-title-none-of = Aucun chiffre de { $name } n’est comparable à celui d’une autre campagne
beside-title-hotter = { $first } chauffe plus que { $second } à sec
beside-title-not-told = On ne peut pas dire lequel chauffe le plus à sec, { $first } ou { $second }
beside-in-all = { $apart } différences de chiffres sur { $compared } sont distinguées.
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
beside-one-day = pas à 95 %
beside-indicative = indicatif
beside-vessels-not-stated = récipients non indiqués
figure-unlike-vessels = autres récipients
figure-unlike-plane = irradiance dans un autre plan
figure-unlike-plane-not-stated = plan de l’irradiance non indiqué
figure-unlike-load-or-sun = charge, soleil ou air différents
figure-unlike-load = autre charge
figure-unlike-span = autre plage de températures de l’eau
figure-unlike-vessel-heat = chaleur des récipients comptée d’un seul côté
figure-unlike-no-budget = on ne sait pas de quoi se compose son ±
beside-note = Chaque ± vaut pour 95 %, sauf là où il est écrit « { beside-one-day } ». Ce que les deux ont en commun s’annule dans la différence ; deux chiffres dont les plages se recouvrent peuvent donc quand même différer.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = Le récipient à sec de { $second } devient plus chaud, par W/m², que celui de { $first } : { $difference } K m²/W de plus ({ $interval }), { $share } % : une différence réelle.
beside-cooler = Le récipient à sec de { $second } devient moins chaud, par W/m², que celui de { $first } : { $difference } K m²/W de moins ({ $interval }), { $share } % : une différence réelle.
beside-hotter-one-day = Le récipient à sec de { $second } est devenu plus chaud, par W/m², que celui de { $first } lors des essais : { $difference } K m²/W de plus ({ $interval }), { $share } %. Ils n’ont pas été soumis à l’essai sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : refaites les deux essais d’autres jours.
beside-cooler-one-day = Le récipient à sec de { $second } est devenu moins chaud, par W/m², que celui de { $first } lors des essais : { $difference } K m²/W de moins ({ $interval }), { $share } %. Ils n’ont pas été soumis à l’essai sur plusieurs jours chacun ; les jours seuls peuvent donc l’expliquer : refaites les deux essais d’autres jours.
beside-hotter-by-chance = On ne peut pas dire lequel des récipients à sec devient plus chaud par W/m², celui de { $second } ou celui de { $first } : ils diffèrent de { $difference } K m²/W ({ $interval }), { $share } %, mais parmi { $pairs } paires, l’une peut différer autant par hasard.
beside-hotter-not-told = On ne peut pas dire lequel des récipients à sec devient plus chaud par W/m², celui de { $second } ou celui de { $first } : { $second } a { $difference } K m²/W de plus, { $share } %, et toute valeur de { $interval } est compatible avec les données.
beside-cooler-not-told = On ne peut pas dire lequel des récipients à sec devient plus chaud par W/m², celui de { $second } ou celui de { $first } : { $second } a { $difference } K m²/W de moins, { $share } %, et toute valeur de { $interval } est compatible avec les données.
beside-hotter-not-compared = Jusqu’où chauffent les récipients à sec de { $second } et de { $first } n’est pas comparé : { $why }.
beside-nothing-shared = { $second } et { $first } n’ont aucun chiffre en commun.
beside-others = Parmi les autres chiffres de { $second } et de { $first }, on peut en comparer { $compared }, et parmi ceux-là en distinguer { $apart }.
comparison-dry-title = Récipients à sec
comparison-dry-note = Palier : là où le récipient ne chauffait plus. K m²/W : récipient au-dessus de l’air par W/m², ± pour 95 %.
comparison-dry-caption = Température du récipient à sec en °C selon les minutes depuis le début d’une série ; en noir, celle de la campagne nommée au-dessus du graphique ; trait épais : le palier. Elles n’étaient pas sous un même soleil : comparez des K m²/W, non des degrés.
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = Température du récipient à sec selon le temps, au plus { $highest }.
comparison-practice-no-rating = JCGM 100:2008 pour les différences
beside-note-difference = L’incertitude d’une différence des autres chiffres comprend la dispersion et les jours des deux campagnes, chacune avec ses propres degrés de liberté, et ce que leurs instruments n’ont pas en commun. L’effet d’un jour sur les deux n’en est pas retiré, ce qui l’agrandit. Le résultat a sa propre comparaison ; le gain et la perte aussi, là où les deux ont un résultat et un bilan thermique.
beside-note-alike = Des chiffres sont comparés là où les fichiers de campagne indiquent des conditions semblables : ceux par W/m², irradiance dans un même plan ; ceux de récipients à sec ou qui refroidissent, autant de récipients, avec la même capacité thermique et la même surface à 2 % près ; durées jusqu’à l’ébullition, rendement et pic d’exergie, irradiance à 2 % près et ambiante à 2 K près ; durées jusqu’à l’ébullition, charge à 2 % près et point d’ébullition à 2 K près ; rendement, une plage de températures de l’eau à 5 K près à ses bouts et à 2 K près en moyenne ; F2, une charge par m² à 10 % près ; constante de temps, charge à 2 % près. Ces limites sont de pratique courante. « Récipients non indiqués » : on ne sait pas s’ils étaient semblables.
beside-note-pairs = « Distingués » : le p de la différence est inférieur à 0,05, corrigé par la méthode de Holm pour les paires où le chiffre est comparé, sur { $pairs } en tout ; il n’est pas corrigé du nombre de chiffres. Une différence de jours isolés n’est jamais dite distinguée.

## Slips that show

dry-sun-down = pendant le palier, le soleil était sous l’horizon : l’horloge, le fuseau horaire ou le lieu est faux
dry-sun-down-remedy = corriger time_zone, latitude et longitude sous [site], ou les heures du fichier de mesures
dry-colder-than-air = le récipient indique { $below } de moins que l’air le plus frais de la série : l’un des deux est dans une autre unité que celle indiquée
dry-very-hot = le récipient indique { $highest }, plus que n’atteignent les cuiseurs faits maison (pratique courante, sans source publiée) : le thermomètre est-il en °F ?
dry-unit-remedy = indiquer vessel_temperature et ambient_temperature sous [units], "°F" ou "°C", comme chaque thermomètre l’affiche
dish-losses-differ = la perte par refroidissement, { $cooling } W/K, et celle du bilan thermique, { $balance } W/K, diffèrent de plus que leurs ± : le soleil a atteint la charge qui refroidissait, ou le vent était autre
dish-losses-differ-remedy = mettre à l’ombre toute l’ouverture et la marmite pendant qu’elle refroidit, et noter le vent dans les deux
box-plane-turned = les relevés du capteur à plat ont été ramenés au plan face au soleil, une estimation ; F1 et F2 sont définis pour eux sans conversion
box-plane-turned-remedy = faire une seconde campagne des mêmes fichiers de mesures sans estimate, avec plane = "horizontal"
notice-long-run-other = { $log } : les relevés s’étendent sur { $days } jours, une série se fait en un seul jour ; vérifiez les dates, ou indiquez start et end
finding-no-water = aucune série de cette campagne ne chauffe de l’eau, il n’y a donc pas de résultat à calculer
finding-no-water-remedy = chauffer une charge d’eau pesée pour obtenir un résultat ; les autres chiffres valent par eux-mêmes
instrument-assumed = non indiquée ; supposée, { $class } : { $basis }

## A test day while it runs, on the terminal

# The first line: how it stands. It is read in the sun, so it is short.
watch-waiting = En attente de la première ligne d’aujourd’hui
watch-silent = Aucune ligne depuis { $time }
watch-over = La fenêtre solaire du jour est fermée
# { $kind }: what is tested, a message that begins with kind-.
watch-other-run = Mesure en cours : { $kind }
watch-begins = Un intervalle commence
watch-no-run = Des lignes arrivent, mais d’aucune série
# { $passed }, { $length }: minutes.
watch-good = Bon jusqu’ici : { $passed } min sur { $length } de cet intervalle
# { $faults }: one of the next two or several, or a message that begins with reason-.
watch-at-risk = Menacé : { $faults }
watch-spoiled = Cet intervalle est perdu : { $faults }
# { $what }: what is limited, a message that begins with limit-; then numbers with their unit.
watch-at-least = { $what } { $found }, au moins { $limit }
watch-at-most = { $what } { $found }, au plus { $limit }
# Behind check-next: what to do.
watch-next-start = orienter, et mettre l’enregistreur en marche
watch-next-logger = voir l’enregistreur : alimentation, câble, mémoire
watch-next-tomorrow = arrêter pour aujourd’hui
watch-next-aim = orienter maintenant
watch-next-no-run = vérifier que l’eau chauffe, et voir start et end dans campaign.toml
watch-next-keep = laisser tel quel
watch-next-enough = c’est assez : vous pouvez arrêter après cet intervalle
watch-next-cool-water = préparer de l’eau froide : l’intervalle suivant sera trop chaud
# { $remedy }: a message that begins with helps-.
watch-next-spoiled = { $remedy } ; l’intervalle suivant commence à { $clock }
# Labels, and what stands beside them.
watch-vessel = récipient
watch-above = { $difference } au-dessus de l’air (Td)
watch-air = air { $air }
watch-irradiance = { $irradiance } W/m²
# { $turned }: as it counts, { $irradiance }: as the sensor that lies flat has it.
watch-irradiance-turned = { $turned } W/m² face au soleil, valeur retenue (capteur posé à plat : { $irradiance })
watch-wind = vent { $wind }
watch-spoils = le perdrait
watch-spoils-irradiance = irradiance sous { $low } ou au-dessus de { $high } W/m²
watch-spoils-wind = vent moyen au-dessus de { $most } (jusqu’ici { $mean })
watch-spoils-water = eau au-dessus de { $most }
watch-today = aujourd’hui
# In place of today, where the newest row is of another day; what stands beside it.
watch-last-day = dernier jour
# { $gained }: the next one.
watch-gained-on = { $date } : { $gained }
# { $all }: intervals of today, used or not.
watch-gained = { $used } sur { $all ->
    [one] { $all } intervalle retenu
   *[other] { $all } intervalles retenus
}
watch-missing = il manque encore : { $missing }
watch-missing-nothing = c’est assez
watch-aim = réorienter
watch-aim-not-stated = pas d’heure : acceptance_half_angle_deg n’est pas indiqué dans campaign.toml. Pratique courante, sans source publiée : un réflecteur peu profond toutes les 45 min environ, une parabole à foyer net toutes les 10 à 15
watch-aim-always = en continu, par un moteur
watch-aim-due = maintenant ({ $clock })
watch-aim-done = plus aujourd’hui
watch-at-in = à { $clock }, dans { $time }
watch-opens = s’ouvre à { $clock }, dans { $time }
watch-closes = se ferme à { $clock }, dans { $time }
watch-closed = fermée depuis { $clock }
# { $said }: what check says; { $level }: one of those that begin with level-.
watch-so-far = { $level } : { $said } (lignes jusqu’à { $clock })
watch-so-far-no-row = { $level } : { $said }
watch-time = heure
watch-time-text = { $now } ; dernière ligne { $row }
watch-seconds = { $seconds } s
# From two days on.
watch-days = { $days } jours
# What is not as it should be. { $what }: an error, in English.
watch-log-missing = { $log } n’est pas encore là
watch-log-gone = { $log } n’est plus là ; ce qu’il contenait avant est montré
watch-not-read = inutilisable pour l’instant : { $what }
watch-campaign-not-read = le fichier de campagne est inutilisable pour l’instant, le dernier bon est pris : { $what }
watch-line-not-ended = { $log } : sa dernière ligne est incomplète, et pas encore prise en compte
watch-begun-anew = { $log } a été recommencé : seul son contenu actuel est pris en compte
watch-none-later = des lignes sont venues sans relevé postérieur à { $clock } : l’horloge de l’enregistreur a-t-elle été reculée ?
watch-clock-jumped = l’horloge des lignes a sauté de { $time }
watch-clocks-apart = l’horloge des lignes et celle de cet ordinateur diffèrent de { $time }
watch-caution = Ne regardez jamais dans le foyer ni vers le soleil. Le métal chaud et la vapeur brûlent : gants. Détournez le cuiseur du soleil avant d’y mettre les mains. Les règlements locaux et la pratique des professionnels habilités passent en premier.
watch-caution-dry = Un récipient sec dépasse de loin 100 °C et brûle dès qu’on le touche. N’y versez jamais d’eau tant qu’il est chaud. Ne regardez jamais dans le foyer ni vers le soleil ; détournez-en le cuiseur avant d’y mettre les mains. Les règlements locaux et la pratique des professionnels habilités passent en premier.
