# Español neutro.
#
# { $name } lo pone el programa, igual que { otro-mensaje }; su orden puede cambiar, pero
# todos han de quedar. Lo que pone una plantilla va entre corchetes: [page].

## Numbers, dates, lists

decimal-mark = ,
list = { $first } y { $last }
# Between two clauses of a sentence.
clause-break = { "; " }
date = { $day } de { $month } de { $year }
month-1 = enero
month-2 = febrero
month-3 = marzo
month-4 = abril
month-5 = mayo
month-6 = junio
month-7 = julio
month-8 = agosto
month-9 = septiembre
month-10 = octubre
month-11 = noviembre
month-12 = diciembre

## What is attached to a report, one line each

attached-campaign = Archivo de campaña: qué se ensayó, dónde y con qué
attached-log = Registro, byte por byte, tal como se leyó
attached-photo = Foto de la cocina, tal como aparece en el informe
attached-rating = Todos los resultados como datos, con toda su precisión
attached-intervals = Una fila por intervalo, utilizados y descartados
attached-comparison = Comparación como datos, con toda su precisión
attached-pairs = Una fila por par de campañas
attached-plan = Plan del día como datos
checkable = Los datos están dentro de este PDF. Cualquiera puede comprobarlo: «simmerline verify ARCHIVO», versión { $version }, lo compone de nuevo a partir de ellos y dice si es el archivo emitido.
checkable-from = Los datos están dentro de este PDF. Cualquiera puede comprobarlo: «simmerline verify ARCHIVO», versión { $version } (de { $address }), lo compone de nuevo a partir de ellos y dice si es el archivo emitido.
checkable-not = Este PDF no lleva datos, así que nadie puede comprobarlo por sí solo. Imprime el SHA-256 de cada archivo en que se basa.

# The rating: page one, conditions, runs, intervals, the line, tests of the dry vessel.
#
# Standardised cooking power is "Ps", the temperature difference between water and ambient
# "Td", the rating "Ps(50)": symbols stay as they are in every language.

## Counts, each within several of the sentences below
#
# Where a language needs them in another case, write them into the sentence instead.

counted-intervals = { $intervals ->
    [one] { $intervals } intervalo
   *[other] { $intervals } intervalos
}
counted-used = { $intervals ->
    [one] { $intervals } intervalo utilizado
   *[other] { $intervals } intervalos utilizados
}
counted-days = { $days ->
    [one] { $days } día
   *[other] { $days } días
}
# Of the line: points less two.
counted-freedom = { $freedom ->
    [one] { $freedom } grado de libertad
   *[other] { $freedom } grados de libertad
}

## Every page

report-kind = Informe de ensayo de cocina solar
report-kind-indicative = Informe de ensayo de cocina solar: indicativo
report-kind-not-valid = Informe de ensayo de cocina solar: no válido
report-kind-no-rating = Informe de ensayo de cocina solar: sin calificación
report-kind-estimated = Informe de ensayo de cocina solar: indicativo, irradiancia estimada
# { $title } is the tester's own.
report-title-indicative = { $title } (indicativo)
report-title-not-valid = { $title } (no válida)
report-title-no-rating = { $title } (sin calificación)
report-title-estimated = { $title } (indicativo, irradiancia estimada)
report-invented = Datos inventados, para demostración
report-statement = Los resultados se refieren solo a la cocina tal como se ensayó. Reprodúzcase solo íntegramente.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = irradiancia estimada
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Informe [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = página [page] de [pages]
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
level-conforms-with-notes = Conforme con notas
level-indicative = Solo indicativa
level-not-valid = No válida
level-no-rating = Sin calificación
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = STILL TO TRANSLATE
headline-conforms-with-notes = STILL TO TRANSLATE
# Debajo de cualquiera de las dos: en qué se apoyan.
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
    [one] { $intervals } intervalo más
   *[other] { $intervals } intervalos más
}
missing-days = { $days ->
    [one] { $days } día más
   *[other] { $days } días más
}
missing-intervals-and-days = { missing-intervals } y { missing-days }

## Page one: the number

headline-label = Potencia de cocción estandarizada Ps(50)
# Beside the number and its ±; 95 % is the level of confidence.
# As in English
headline-unit = W (95 %)
headline-unit-one-day = W (un día)
headline-what-it-is = STILL TO TRANSLATE
page-no-rating = sin calificación
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = irradiancia estimada { $way }
headline-horizontal = STILL TO TRANSLATE
headline-plane-not-stated = STILL TO TRANSLATE
headline-one-day = STILL TO TRANSLATE
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-extrapolated = una extrapolación: 50 K queda fuera de lo observado
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
journey-degrees = { $start } a { $target }
journey-to-boiling = de { $start } a la ebullición ({ $boiling } aquí)
# { $result } as in stagnation-result.
headline-dry = El recipiente vacío llegó a { $difference } K por encima del aire con { $irradiance } W/m²: { $result } (sección { $section }).

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
# As in English
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
# As in English
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation }; R² = { $r_squared }; { counted-used } en { counted-days }, Td de { $lowest } a { $highest } K
# R² of points that all have the same power.
undefined = indefinido
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
power-line-alt = Diagrama de dispersión de la potencia de cocción estandarizada en vatios frente a la diferencia de temperatura entre agua y ambiente en kelvin. { $facts }; descartados: { $aside }. La recta indica { $power } vatios a 50 kelvin.
power-line-estimated = Irradiancia estimada: { $text }
no-line-facts = { counted-used }, descartados: { $aside }; no se puede ajustar ninguna recta
no-line-alt = Diagrama de dispersión de la potencia de cocción estandarizada frente a la diferencia de temperatura: { $facts }.
page-findings = STILL TO TRANSLATE
conditions-title = STILL TO TRANSLATE
conditions-track = STILL TO TRANSLATE
brief-irradiance = Irradiancia
brief-irradiance-change = Variación de la irradiancia en un intervalo
brief-wind = Viento medio, y rachas largas
brief-ambient = Temperatura ambiente media
brief-water-above = Agua sobre el ambiente, ambos extremos
brief-water-below = Agua bajo la ebullición, ambos extremos
brief-water-fixed = Temperatura del agua, ambos extremos
brief-solar-time = Hora solar
page-before-you-cook = Antes de cocinar.
headline-caution = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y esta calificación no dice nada sobre la seguridad de los alimentos. Lea las advertencias de la sección { $section } antes de cocinar. Las normas locales y la práctica de los profesionales habilitados van primero.
headline-caution-no-rating = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y estas cifras no dicen nada sobre la seguridad de los alimentos. Lea las advertencias de la sección { $section } antes de cocinar. Las normas locales y la práctica de los profesionales habilitados van primero.
# What others measured, on page two, to hold a rating against.
yardstick-own = STILL TO TRANSLATE
yardstick-parabolic = STILL TO TRANSLATE
yardstick-box = STILL TO TRANSLATE
yardstick-caution = STILL TO TRANSLATE

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = se utilizaron solo { counted-intervals }, la práctica pide { $least }
finding-too-few-intervals-own = se utilizaron solo { counted-intervals }, el límite propio de la campaña pide { $least }
finding-too-few-intervals-remedy = { missing-intervals } en condiciones de utilizarse
finding-too-few-days = hay intervalos utilizados en { counted-days }, la práctica pide { $least }
finding-too-few-days-own = hay intervalos utilizados en { counted-days }, el límite propio de la campaña pide { $least }
finding-too-few-days-remedy = intervalos utilizados en { missing-days }
finding-no-rating = no se puede ajustar ninguna recta: hacen falta tres intervalos utilizados con irradiancia, con distintas diferencias de temperatura
finding-no-rating-remedy = más intervalos que se puedan utilizar, desde el ambiente hasta cerca de la ebullición
finding-no-rating-remedy-irradiance = medir la irradiancia; sin ella no se puede normalizar la potencia
finding-r-squared-low = R² es { $r_squared }, por debajo de { $least }; la práctica se conformaría con una nota, este informe no
finding-r-squared-low-own = R² es { $r_squared }, por debajo del límite propio de la campaña de { $least }
finding-r-squared-low-remedy = orientación más constante, cielo más despejado y menos viento; un sensor que no toque la olla
# De una recta a la que sus puntos se ajustan bien.
finding-r-squared-low-remedy-flat = R² es bajo porque la potencia apenas cae con la temperatura, no porque los puntos se dispersen, y el ± dice qué tan segura es la cifra; un intervalo más amplio de temperatura del agua eleva R²
finding-line-not-falling = la potencia no disminuye al calentarse el agua, cosa que no hace ninguna cocina real
finding-line-not-falling-remedy = comprobar que la temperatura del agua es la del agua, y abarcar un margen más amplio de temperaturas
finding-no-useful-heat = la recta indica { $power } W a { $difference } K: ahí el agua pierde calor
finding-no-useful-heat-remedy = comprobar que las lecturas son de agua que se está calentando, con la cocina orientada
finding-extrapolated = { $difference } K queda fuera de las diferencias de temperatura observadas, { $lowest } a { $highest } K
finding-extrapolated-remedy = intervalos utilizados a ambos lados de { $difference } K
# { $runs }: a list of finding-load-off-run.
finding-load-off = la carga se aparta más de un { $tolerance } % de { $load } kg/m² en { $runs }
# As in English
finding-load-off-run = { $run } ({ $load } kg/m²)
finding-load-off-remedy = pesar { $load } de agua por cada m² de área de intercepción, o corregir esa área
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = no se midió el viento en { $runs }
finding-wind-not-measured-remedy = medir el viento junto a la cocina, a su altura
finding-wind-estimated = el viento es una estimación a ojo en { $runs }, con la exactitud de un grado de la escala de Beaufort
finding-irradiance-estimated = la irradiancia no se midió junto a la cocina en el plano normal a la radiación directa, sino que se estimó { $way }
finding-irradiance-estimated-remedy = medir la irradiancia junto a la cocina, con un sensor orientado hacia el sol
finding-irradiance-missing = no se midió la irradiancia en { $runs }, cuyos intervalos no se pueden normalizar y no están en la recta
finding-irradiance-missing-remedy = medir la irradiancia en el plano normal a la radiación directa
finding-irradiance-horizontal = la irradiancia se midió en el plano horizontal, la práctica pide el plano normal a la radiación directa; allí suele ser mayor, de modo que la calificación es probablemente demasiado alta
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = montar el sensor de modo que mire al sol como la cocina; hasta entonces, estimate = "from-horizontal" lleva sus lecturas al plano orientado al sol
finding-irradiance-plane-not-stated = no se indica en qué plano se midió la irradiancia; la práctica pide el plano normal a la radiación directa, que es el que se supone
# plane = "normal" y [instruments.irradiance] son partes del archivo de campaña y quedan como están.
finding-irradiance-plane-not-stated-remedy = indicar bajo [instruments.irradiance] cómo estaba puesto el sensor: plane = "normal" si miraba al sol, plane = "horizontal" si estaba tendido
finding-impossible-gain = más calor ganado que luz solar interceptada en { counted-used }; el primero absorbió { $power } W de { $sunlight } W
finding-impossible-gain-remedy = comprobar la masa de agua, el área de intercepción y las unidades de temperatura e irradiancia
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = límites propios más laxos que un requisito: { $limits }
finding-recommendation-relaxed = límites propios más laxos que una recomendación: { $limits }
finding-limit-tightened = límites propios más estrictos que la práctica: { $limits }
finding-guard = una banda de guarda de la incertidumbre expandida en cada límite (práctica: ninguna)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (práctica: { $practice })
# As in English
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = volver a los límites de la práctica: borrar estos bajo [limits] en el archivo de campaña
finding-excluded-by-tester = { counted-intervals } por exclusión de quien ensayó
finding-excluded-by-tester-remedy = ninguno, si se sostiene el motivo dado en el archivo de campaña

## What was tested

section-tested = Qué se ensayó
page-instruments = Instrumentos
page-instruments-quantity = magnitud
page-instruments-instrument = instrumento
page-instruments-uncertainty = incertidumbre estándar

## Conditions

section-conditions = Condiciones
# Headers of the table.
page-conditions-condition = condición
page-conditions-limit = límite
page-conditions-short-name = STILL TO TRANSLATE
page-conditions-standing = carácter
page-conditions-observed = STILL TO TRANSLATE
page-conditions-set-aside = descartados
# What is limited. Also within findings.
limit-water-above-ambient = agua por encima del ambiente medio
limit-water-below-boiling = agua por debajo del punto de ebullición local
limit-water-temperature = temperatura del agua
limit-ambient = temperatura ambiente media
limit-irradiance-lowest = irradiancia mínima en el intervalo
limit-irradiance-highest = irradiancia máxima en el intervalo
limit-irradiance-change = variación de la irradiancia en el intervalo
limit-wind-mean = viento medio
limit-wind-gust = viento sostenido más de diez minutos (descarta el ensayo)
limit-solar-time-start = hora solar al inicio
limit-solar-time-end = hora solar al final
limit-solar-time = STILL TO TRANSLATE
limit-interval = duración de un intervalo
limit-load = agua por cada m² de área de intercepción
limit-load-tolerance = cuánto puede apartarse la carga
limit-intervals = intervalos utilizados
limit-days = días con intervalos utilizados
limit-r-squared = R² de la recta
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = requisito
standing-recommendation = recomendación
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = propio, por un requisito
standing-own-recommendation = propio, por una recomendación
# As in English
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = sin recta
# Of gusts.
conditions-never = nunca
conditions-gust = durante { $time } como máximo
conditions-no-interval = ningún intervalo
conditions-not-measured = no medido
conditions-observed = STILL TO TRANSLATE
conditions-r-squared = STILL TO TRANSLATE
# "Own" as in standing-own-requirement.
conditions-own = Los límites marcados como «propio» son de la campaña y se desvían de la práctica.
conditions-guard = Rige una banda de guarda: un valor cuenta como dentro de un límite solo si lo está con toda su incertidumbre, según la regla de decisión al final.

## Runs

section-runs = Ensayos
runs-axes = STILL TO TRANSLATE
runs-axes-but-clock = STILL TO TRANSLATE
runs-axes-own-start = STILL TO TRANSLATE
runs-shaded = STILL TO TRANSLATE
runs-wind = STILL TO TRANSLATE
runs-no-wind = STILL TO TRANSLATE
runs-no-irradiance = STILL TO TRANSLATE
runs-lanes = STILL TO TRANSLATE
runs-predicted = STILL TO TRANSLATE
run-title = Ensayo { $number }, { $date }
run-used = STILL TO TRANSLATE
run-load = STILL TO TRANSLATE
run-aimed = STILL TO TRANSLATE
run-predicted = STILL TO TRANSLATE
run-not-predicted = STILL TO TRANSLATE
run-tester = STILL TO TRANSLATE
run-hole = Ningún intervalo de { $from } a { $to }: allí no hay dos lecturas del agua separadas de { $shortest } a { $longest } minutos.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Paneles frente a la hora local del reloj, de { $from } a { $to }: agua entre { $coldest } y { $hottest } grados Celsius con la temperatura ambiente; { $irradiance }; { $wind }. Utilizados y sombreados: { $used } de { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Descartados: { $reasons }.
run-alt-none-aside = No se descarta nada.
# As in English
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = STILL TO TRANSLATE
run-alt-not-predicted = La recta no predice nada para este ensayo.
run-alt-irradiance = irradiancia entre { $lowest } y { $highest } vatios por metro cuadrado
run-alt-no-irradiance = irradiancia no medida
run-alt-wind = viento entre { $lowest } y { $highest } metros por segundo
run-alt-no-wind = viento no medido

## Intervals

section-intervals = Intervalos
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = hora local
page-intervals-solar = hora solar
page-intervals-water = agua, °C
# As in English
page-intervals-ambient = amb., °C
page-intervals-irradiance = irrad., W/m²
page-intervals-range = STILL TO TRANSLATE
page-intervals-wind = viento, m/s
# As in English
page-intervals-power = P, W
# As in English
page-intervals-difference = Td, K
# As in English
page-intervals-standardised = Ps, W
interval-no-irradiance = no normalizado: sin irradiancia
page-intervals-continued = STILL TO TRANSLATE
intervals-note = STILL TO TRANSLATE
intervals-dots = STILL TO TRANSLATE
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = el agua estaba aún demasiado cerca del ambiente
reason-water-above-window = el agua estaba demasiado cerca de la ebullición
reason-ambient-out-of-range = el aire estaba demasiado frío o demasiado caliente
reason-irradiance-low = el sol era demasiado débil
reason-irradiance-high = el sol era demasiado fuerte
reason-irradiance-unsteady = el sol era inestable
reason-wind-high = había demasiado viento
reason-outside-solar-window = era demasiado temprano o demasiado tarde en el día solar
reason-reading-gap = faltaban lecturas
reason-excluded-by-tester = quien ensayó excluyó el tramo
reason-not-cloudless = quien ensayó no declara que el cielo estuviera sin nubes
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

section-regression = Regresión e incertidumbre
regression-none = No se puede ajustar ninguna recta: para ello hacen falta al menos tres intervalos utilizados con irradiancia, con distintas diferencias de temperatura.
regression-method = STILL TO TRANSLATE
# Labels, and what stands beside them.
regression-line = recta
regression-intercept = ordenada en el origen a
regression-watts = { $value } W, error estándar { $error } W
regression-slope = pendiente b
regression-watts-per-kelvin = { $value } W/K, error estándar { $error } W/K
regression-residual = STILL TO TRANSLATE
regression-residual-text = STILL TO TRANSLATE
regression-points = puntos
regression-points-text = { counted-intervals } en { counted-days }, { counted-freedom }
residuals-caption = STILL TO TRANSLATE
# Read out to those who do not see the figure.
residuals-alt = Residuos en torno a la recta en vatios, frente a la diferencia de temperatura en kelvin y frente a la hora local del reloj, con una marca para cada día; desviación estándar { $deviation } vatios; { $outside ->
    [one] { $outside } de { $points } puntos queda a más del doble de eso de la recta.
   *[other] { $outside } de { $points } puntos quedan a más del doble de eso de la recta.
}
page-scatter = STILL TO TRANSLATE
page-uncertainty = Incertidumbre de Ps(50)
# Headers of a table of six columns.
page-uncertainty-source = fuente
page-uncertainty-of-source = su incertidumbre estándar
# Type A or B of the GUM.
page-uncertainty-type = tipo
page-uncertainty-sensitivity = sensibilidad
page-uncertainty-of-rating = STILL TO TRANSLATE
page-uncertainty-factor = STILL TO TRANSLATE
page-uncertainty-part = parte de ±²
section-heat-balance = Balance térmico
page-balance-quantity = magnitud
balance-what = El agua absorbe lo que la cocina gana del sol menos lo que pierde al aire: P = g·G − u·Td, con la irradiancia G y la diferencia de temperatura Td. Así se puede decir la potencia a cualquier irradiancia. La calificación escala las pérdidas con el sol; esto no.
# Above a column of values. "One day": it was tested on one day only, so it is no 95 % range.
balance-spread = STILL TO TRANSLATE
balance-spread-one-day = STILL TO TRANSLATE
balance-gain = ganancia del sol, g
balance-gain-text = { $value } m²
balance-loss = pérdida al aire, u
balance-loss-text = { $value } W/K
balance-power = potencia a 700 W/m² y 50 K, 700·g − 50·u
balance-power-text = { $value } W
balance-ratio = cociente optotérmico, g/u
balance-ratio-text = { $value } K m²/W
balance-ratio-none = no se da: puede que no haya pérdida
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = STILL TO TRANSLATE
balance-counts-vessels = Aquí la ganancia, la pérdida y la potencia son del agua y de los recipientes, que cuentan con { $heat } J/K: { $basis }. Todo lo demás que este informe dice de potencia, ollas y meses es solo del agua.
balance-scaling-adds = Con esta pérdida, escalar la calificación en proporción de { $mean } W/m² a 700 W/m² suma { $power } W a Ps(50).
balance-scaling-takes = Con esta pérdida, escalar la calificación en proporción de { $mean } W/m² a 700 W/m² resta { $power } W a Ps(50).
balance-caption = STILL TO TRANSLATE
balance-caption-one-day = STILL TO TRANSLATE
# Behind a caption.
balance-beyond = Intervalos fuera de los bordes: { $count }.
# Read out to those who do not see the figure.
balance-alt = Diagrama de dispersión de la potencia entre la irradiancia, en metros cuadrados, frente a la diferencia de temperatura entre la irradiancia, de { $lowest } a { $highest } kelvin metro cuadrado por vatio. Puntos: { counted-intervals } a los que se ajusta la recta; cruces: otros { $others }. La recta empieza en { $gain } metros cuadrados, sin diferencia de temperatura; la pérdida es de { $loss } vatios por kelvin.
# Axes and key of the figure: there is little room.
balance-axis-difference = diferencia de temperatura entre irradiancia, Td/G, K m²/W
balance-axis-power = potencia entre irradiancia, P/G, m²
balance-key-used = en el ajuste ({ $count })
balance-key-others = los demás ({ $count })
balance-key-line = g − u·Td/G, banda del 95 % con instrumentos
balance-key-line-one-day = g − u·Td/G, banda de un día con instrumentos
balance-none-irradiance = No se pueden ajustar ganancia y pérdida: no se midió la irradiancia.
balance-none-few = No se pueden ajustar ganancia y pérdida: hacen falta al menos tres intervalos con lecturas fiables; hallados: { $intervals }.
balance-none-alike = No se pueden distinguir ganancia y pérdida: la diferencia de temperatura y la irradiancia guardaron casi la misma proporción en todos los intervalos.
balance-source = STILL TO TRANSLATE

## Cooking

section-cooking = Qué significa para cocinar
page-cooking-water = agua
# [journey] is put in by the program: "from 20 °C to 95 °C", the message journey.
page-cooking-time = tiempo [journey]
page-cooking-range = margen
page-cooking-boiling = hasta hervir
page-foods-food = alimento
page-foods-specific-heat = calor específico
page-foods-cooked = se cuece a
page-foods-amount = cantidad
page-foods-range = margen
page-year = Días despejados a lo largo del año
page-year-month = mes
page-year-hours = horas con sol suficiente
page-year-heat = calor al día
page-year-water = agua pasteurizada al día
page-fuel = Combustible al que equivale el calor
page-dry = Recipiente vacío
page-dry-date = fecha
page-dry-plateau = meseta
page-dry-air = aire
page-dry-irradiance = irradiancia
page-dry-difference = diferencia por cada W/m²
page-dry-notes = notas
# As in English
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimada
# As in English
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = STILL TO TRANSLATE
page-assumed = Supuestos

## Cautions

section-cautions = Advertencias

## Provenance

section-provenance = Desviaciones, notas y procedencia
page-deviations = STILL TO TRANSLATE
page-tester-notes = Notas de quien ensayó
page-notices = Avisos de la lectura de los registros
page-logs = Cómo se leyeron los registros
page-made-with = Hecho con
page-sources = STILL TO TRANSLATE
# SHA-256: digits that change when a file changes.
page-inputs = STILL TO TRANSLATE
# A photo among the inputs.
input-photo = { $file }, tal como está en este informe
# { $file }: its name, or input-photo.
input-outside = { $file }, de fuera de la carpeta de la campaña

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = no indicado

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Cocina de caja
cooker-panel = Cocina de panel
cooker-concentrating = Cocina de concentración
cooker-tube = Cocina de tubo
aperture-circle = círculo, { $diameter } m de diámetro
aperture-rectangle = rectángulo, { $width } m por { $height } m
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = polígono regular, { $sides } lados, { $across } m entre vértices
aperture-outline = contorno de { $points } puntos
# { $shape }: one of the four above. The beam is the light that comes straight from the sun.
aperture-off-normal = { $shape }, radiación directa a { $degrees }° de su normal

## Ways to estimate irradiance
#
# Each goes on after "irradiance estimated", and also stands alone after a comma.

estimated-clear-sky = con un modelo de cielo despejado (Ineichen y Perez 2002)
estimated-from-horizontal = a partir de un sensor en horizontal (Erbs, Klein y Duffie 1982)
estimated-station = a partir del registro de una estación cercana
estimated-solar-panel = a partir de la corriente de cortocircuito de un panel solar

## Classes of instruments

# Also within budget-assumed and notice-instrument-taken: "assumed a kitchen scale".
class-pyranometer-a = piranómetro de clase A
class-pyranometer-b = piranómetro de clase B
class-pyranometer-c = piranómetro de clase C
class-reference-cell = célula de referencia
class-solar-panel = panel solar por su corriente de cortocircuito
class-hand-held-meter = medidor de mano
class-thermocouple-t-1 = termopar tipo T, clase 1
class-thermocouple-t-2 = termopar tipo T, clase 2
class-thermocouple-k-1 = termopar tipo K, clase 1
class-thermocouple-k-2 = termopar tipo K, clase 2
class-thermocouple-j-1 = termopar tipo J, clase 1
class-thermocouple-j-2 = termopar tipo J, clase 2
class-pt100-a = Pt100, clase A
class-pt100-b = Pt100, clase B
class-kitchen-thermometer = termómetro de cocina
class-oven-dial = termómetro de horno de aguja
class-measuring-jug = jarra medidora
class-platform-scale = báscula de plataforma
class-kitchen-scale = balanza de cocina
class-watch = reloj, leído a mano
class-logger = reloj de un registrador de datos
# What the uncertainty of a class follows from. 95 %: level of confidence.
basis-for-95-percent = ± { $limit } % para el 95 %
basis-within-percent = dentro de ± { $limit } %
basis-within-kelvin = dentro de ± { $limit } K
basis-within-kelvin-read = dentro de ± { $limit } K, con lectura a { $step } K
basis-within-seconds = dentro de ± { $limit } s

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
# As in English
subtitle-cooker = { $cooker }, { $area } m²
# As in English
subtitle-site = { $site }, { $elevation } m
subtitle-tester = ensayada por { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = del { $first } al { $last }
# "28 September to 3 October 2026".
dates-of-a-year = del { $day } de { $month } al { $last }
dates = del { $first } al { $last }

## What was tested
#
# Labels stand at the left in a column of about 18 letters; longer ones break.

tested-photo = La cocina tal como se ensayó.
# Read out to those who do not see it.
tested-photo-alt = Fotografía de la cocina { $cooker }
tested-cooker = Cocina
tested-name = nombre
tested-identification = identificación
tested-type = tipo
tested-area = área de intercepción
# As in English
tested-area-text = { $area } m²
tested-aperture = abertura
tested-description = descripción
tested-condition = estado
tested-received = recibida el
tested-mass = masa
tested-cost = costo
# { $currency }: as the tester wrote it.
# As in English
tested-cost-text = { $cost } { $currency }
tested-cost-no-currency = { $cost } (moneda no indicada)
tested-load = Carga
tested-water = agua
tested-per-area = por área de intercepción
tested-per-area-text = STILL TO TRANSLATE
tested-per-area-own = { $load } kg/m² (límite propio: { $own } kg/m²)
tested-vessels = recipientes
tested-environment = Entorno de los intervalos utilizados
environment-ambient = ambiente
environment-irradiance = irradiancia
environment-wind = viento
environment-numbers = media { $mean }, lecturas { $range }
environment-none = ningún intervalo utilizado
tested-site = Lugar
tested-place = lugar del ensayo
tested-position = posición
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
tested-boiling = el agua hierve a
tested-boiling-by-pressure = { $boiling }, según una presión medida de { $pressure } hPa
tested-boiling-by-elevation = { $boiling }, según la altitud
tested-time-zone = zona horaria
tested-test = Ensayo
tested-method = método
# The title of the standard stands in English.
# As in English
tested-method-text = ASAE { $procedure }, testing and reporting solar cooker performance
tested-dates = fechas
tested-dates-text = { $dates }, { $runs ->
        [one] { $runs } ensayo
       *[other] { $runs } ensayos
    }
tested-tracking = seguimiento
# { $minutes }: a number, or a list of numbers.
tested-tracking-text = reorientada cada { $minutes } min
tested-issued = informe emitido
tested-parties = Laboratorio y cliente
tested-laboratory = laboratorio
tested-laboratory-not-stated = nombre y dirección no indicados
tested-tester = ensayada por
tested-authorised = autorizado por
tested-client = STILL TO TRANSLATE
tested-contact = STILL TO TRANSLATE
tested-client-data = STILL TO TRANSLATE
tested-sampling = muestreo
tested-not-sampled = STILL TO TRANSLATE
tested-others = STILL TO TRANSLATE
tested-others-station = irradiancia, del registro de una estación cercana
tested-stated-note = STILL TO TRANSLATE

## What was tested: instruments

tested-water-temperature = temperatura del agua
tested-ambient-temperature = temperatura ambiente
tested-wind-speed = velocidad del viento
tested-water-mass = masa de agua
tested-irradiance-estimated = irradiancia, estimada
tested-irradiance-normal = irradiancia, normal a la radiación directa
tested-irradiance-horizontal = irradiancia, plano horizontal
tested-irradiance-plane-assumed = irradiancia, plano no indicado, tomado como normal a la radiación directa
instrument-not-measured = no medido
# { $description }: the tester's own words; { $id }: a mark or number.
# As in English
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
# As in English
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
instrument-estimated-uncertainty = { $uncertainty }; { $budget }
instrument-uncertainty-of-model = la del modelo; { $budget }
# { $budget }: where it stands.
budget-in-section = sección { $section }
budget-in-own-report = el balance de incertidumbre está en su propio informe
instrument-by-class = por su clase, { $basis }
instrument-by-eye = a ojo, escala de Beaufort (WMO-No. 8)
instrument-by-eye-uncertainty = el margen de un grado, por ejemplo de 0,3 a 1,5 m/s
uncertainty-percent = { $percent } % de la lectura
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

budget-combined = combinada
budget-root = raíz de la suma de cuadrados
# The rating with its expanded uncertainty.
# As in English
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (un día)
budget-scatter = dispersión en torno a la recta
budget-scatter-text = { $deviation } W por intervalo, { $intervals ->
        [one] { $intervals } intervalo
       *[other] { $intervals } intervalos
    }
budget-reading = lectura de la temperatura del agua
budget-reading-text = { $deviation } W por intervalo, { $intervals ->
        [one] { $intervals } intervalo
       *[other] { $intervals } intervalos
    }; más que la dispersión observada
budget-days = intervalos y días
budget-days-text = { $days ->
        [one] { $days } día, dejado fuera
       *[other] cada uno de { $days } días, dejado fuera por turno
    }
budget-per-percent = STILL TO TRANSLATE
budget-per-kelvin = STILL TO TRANSLATE
# As in English
budget-percent = { $share } %
budget-tiny = STILL TO TRANSLATE
budget-offset-of = { $known }; de ella, el error constante
budget-scale = { $percent } % contando desde { $about }, la otra parte de la misma incertidumbre
# { $uncertainty }: "0.5 K" or "3 % of the reading".
budget-stated = { $uncertainty }, indicada
# { $class }: one of the messages that begin with class-; { $basis }: one that begins with basis-.
# As in English
budget-class = { $class }: { $basis }
budget-assumed = se supone { $class }: { $basis }
# What is in error, in the same table, and in the sentences below.
error-irradiance = irradiancia
error-clear-sky = irradiancia, estimada
# From the horizontal plane to the plane normal to the beam.
error-conversion = irradiancia, llevada al plano del sol
# A weather station a few kilometres away.
error-distance = irradiancia, en la estación
error-water-temperature = temperatura del agua, error constante
error-water-scale = temperatura del agua, error de escala
error-ambient-temperature = temperatura ambiente, error constante
error-ambient-scale = temperatura ambiente, error de escala
error-water-mass = masa de agua
error-specific-heat = calor específico del agua
error-clock-rate = tiempo
# What their uncertainty follows from, where it is not the tester's to state.
known-clear-sky = { $percent } %: modelo de cielo despejado 5 %, turbidez dentro de ± 2 el resto
known-conversion = conversión { $percent } %, por una radiación directa conocida dentro de un quinto
known-distance = { $percent } % por una estación cercana
known-specific-heat = 4186 J/(kg K) dentro de ± { $percent } %
known-clock-rate = marcha del reloj dentro de ± { $percent } %
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = STILL TO TRANSLATE
source-wmo-8 = WMO-No. 8, totales horarios, para las clases de ISO 9060:1990 (patrón secundario, primera, segunda) a las que siguen las A, B, C de 2018
source-iec-60584 = IEC 60584-1:2013, tolerancia hasta 100 °C
source-iec-60751 = STILL TO TRANSLATE
source-clear-sky = STILL TO TRANSLATE
source-conversion = STILL TO TRANSLATE
source-specific-heat = IAPWS-IF97, 10 °C a 95 °C

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
outlook-reached = Se alcanzan los ± { $target } W buscados.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = Los ± { $target } W buscados requieren { $more }, suponiendo la dispersión vista hasta ahora.
outlook-more-one-day = Los ± { $target } W buscados requieren { $more }, suponiendo la dispersión vista hasta ahora y que los días no difieran.
outlook-intervals = { $intervals ->
        [one] { $intervals } intervalo utilizado más
       *[other] { $intervals } intervalos utilizados más
    }
outlook-intervals-and-days = { $intervals ->
        [one] { $intervals } intervalo utilizado más
       *[other] { $intervals } intervalos utilizados más
    } en { $days ->
        [one] { $days } día más
       *[other] { $days } días más
    }
# { $heaviest }: one of the sentences that follow.
outlook-out-of-reach = Los ± { $target } W buscados no se pueden alcanzar con más intervalos: los instrumentos por sí solos dejan ± { $least } W. { $heaviest }
heaviest-irradiance = Lo que más pesa es la irradiancia.
heaviest-clear-sky = Lo que más pesa es la irradiancia, estimada.
heaviest-conversion = Lo que más pesa es la irradiancia, llevada al plano del sol.
heaviest-distance = Lo que más pesa es la irradiancia, en la estación.
heaviest-water-temperature = Lo que más pesa es la temperatura del agua.
heaviest-water-scale = Lo que más pesa es la escala del termómetro del agua.
heaviest-ambient-temperature = Lo que más pesa es la temperatura ambiente.
heaviest-ambient-scale = Lo que más pesa es la escala del termómetro del ambiente.
heaviest-water-mass = Lo que más pesa es la masa de agua.
heaviest-specific-heat = Lo que más pesa es el calor específico del agua.
heaviest-clock-rate = Lo que más pesa es el tiempo.
outlook-too-far = Los ± { $target } W buscados requerirían más intervalos de los que nadie mide, suponiendo la dispersión vista hasta ahora.
outlook-too-far-one-day = Los ± { $target } W buscados requerirían más intervalos de los que nadie mide, suponiendo la dispersión vista hasta ahora y que los días no difieran.

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

days-one = Todos los intervalos utilizados son de un solo día: no se puede saber cuánto difieren los días, así que eso no está en la incertidumbre. Otro día bien puede dar un valor fuera del margen indicado.
days-too-few-intervals = Demasiado pocos intervalos para distinguir los días de la dispersión; cuánto difieren los días no está en la incertidumbre.
days-no-scatter = Los intervalos están sobre las rectas de sus días sin dispersión alguna, así que no se pueden poner a prueba los días.
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
# guard = true está escrito en el archivo de campaña y queda como está.
deviation-guard = STILL TO TRANSLATE
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run }: de { $from } a { $to }, tramo excluido por quien ensayó: { $reason }.
deviation-excluded-no-reason = { $run }: de { $from } a { $to }, tramo excluido por quien ensayó: sin motivo indicado.
deviation-findings = STILL TO TRANSLATE
deviation-interval = STILL TO TRANSLATE
# Labels stand at the left; there is room for 20 letters.
made-with = STILL TO TRANSLATE
made-issued = emitido
made-practice = STILL TO TRANSLATE
made-solar-time = hora solar
made-solar-time-text = NREL/TP-560-34302, a partir de la hora y la longitud
made-boiling = punto de ebullición
made-boiling-text = atmósfera ISO 2533 donde no se midió la presión, saturación IAPWS-IF97
made-decision = regla de decisión
made-decision-text = STILL TO TRANSLATE
made-decision-guarded = STILL TO TRANSLATE
made-decision-wind = viento ± { $wind } m/s
made-decision-no-wind = viento sin ella, pues su incertidumbre no está indicada
made-irradiance = irradiancia
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimada { $way }; plano normal a la radiación directa según Liu y Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimada { $way }, turbidez de Linke { $turbidity } según lo indicado; plano normal a la radiación directa según Liu y Jordan 1963
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
memory-food = STILL TO TRANSLATE
memory-cautions = STILL TO TRANSLATE
report-end = Fin del informe { $number }
balance-one-day = todo se midió en un solo día, o en días de los que no se puede dejar fuera ninguno, así que los márgenes de la ganancia y de la pérdida no son márgenes del 95 %
balance-one-day-remedy = ensaye otros días
balance-irradiance-hardly-varied = la irradiancia apenas varió ({ $range } W/m²): la ganancia y la pérdida se distinguen solo por la temperatura del agua, y lo que se dice de otra irradiancia descansa en el modelo
balance-irradiance-hardly-varied-remedy = ensaye con un sol más débil y con uno más fuerte
balance-loss-not-shown = la pérdida es de { $loss } W/K y puede ser nula ({ $range } W/K)
balance-loss-not-shown-remedy = ensaye en un margen más amplio de temperaturas del agua, y en más días
cooking-opinion = STILL TO TRANSLATE

## What it means for cooking

cooking-no-line = Sin una recta no se puede decir nada sobre los tiempos de calentamiento.
cooking-not-valid = Se omite: mientras los números contradigan la física, nada se puede decir de tiempos de calentamiento, alimentos ni meses.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, la ensayada
cooking-not-there = no llega
cooking-not-there-tends = no llega; tiende a { $temperature }
cooking-may-not-there-tends = puede no llegar; tiende a { $temperature }
cooking-time-range = { $shortest } a { $longest }
cooking-time-open = { $shortest } o más; puede no llegar
# As in English
cooking-boil = { $time } ({ $range })
cooking-foods-title = Alimentos llevados a la temperatura de cocción y mantenidos a ella en menos de { $time }
cooking-foods-all = En { $time }, lo que dura la ventana solar, cada uno de estos alimentos llega a su temperatura de cocción y se mantiene en ella en la cantidad de la carga ensayada, { $load }, o más: { $foods }.
# As in English
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = Desde { $start } con { $irradiance } W/m², en lo que dura la ventana solar; nunca más que los { $load } de la carga ensayada, más allá de la cual el ensayo no dice nada. Calores específicos según Chen 1985 a partir de los contenidos de agua del ASHRAE Handbook, Refrigeration (ambos de memoria); las temperaturas y los tiempos de cocción son práctica habitual, sin fuente publicada, los { $safe } son los del USDA FSIS. Estimado: compruébelo con un termómetro dentro del alimento.
cooking-amount-or-more = { $amount } o más
cooking-cooked-at = { $temperature } durante { $time }
cooking-amount-range = { $lowest } a { $highest }
cooking-amount-up-to = hasta { $highest }; puede no llegar
cooking-heat-ends = Con { $irradiance } W/m², el calor útil termina a una temperatura del agua de { $end } ({ $range }), donde la potencia llega a cero; aquí el agua hierve a { $boiling }.
cooking-heat-ends-or-boils = Con { $irradiance } W/m², el calor útil termina a una temperatura del agua de { $end } ({ $range }), donde la potencia llega a cero; también puede durar hasta que el agua hierva, aquí a { $boiling }.
cooking-ends-perhaps = Aquí el agua hierve a { $boiling }, probablemente antes de que termine el calor útil: el margen de ese final baja hasta { $lowest }.
cooking-ends-above = Aquí el agua hierve a { $boiling }, antes de que termine el calor útil.
cooking-never-ends = La potencia no baja, de modo que no muestra ningún final del calor útil; aquí el agua hierve a { $boiling }.
cooking-boils-below-target = Aquí el agua hierve a { $boiling }, por debajo de { $target }; los tiempos son hasta la ebullición.
cooking-light-of-test = Luz solar constante de { $irradiance } W/m² en el plano del sensor de irradiancia, la media de los intervalos utilizados, con la que la recta no necesita cambio de escala; viento como en los intervalos utilizados, la cocina reorientada como en el ensayo.
cooking-light-asked = Luz solar constante de { $irradiance } W/m² en el plano del sensor de irradiancia, como pide la campaña, con la potencia según el balance térmico; viento como en los intervalos utilizados, la cocina reorientada como en el ensayo.
cooking-air-mean = Ambiente a { $ambient }, la media de los intervalos utilizados.
cooking-air-asked = Ambiente a { $ambient }, como pide la campaña.
cooking-assumed-load = La carga absorbe la misma potencia que la carga ensayada; cargas mucho menores o mayores absorben menos o más, y no se cuenta el calor que almacena la propia olla. Por debajo y por encima de las temperaturas de los intervalos utilizados, la recta se prolonga tal cual, en línea recta.
cooking-assumed-edges = Los márgenes siguen los bordes de la banda del 95 % de la potencia, instrumentos incluidos. Valen para la media de muchos calentamientos, no para uno solo bajo una nube.
cooking-assumed-edges-one-day = Los márgenes siguen los bordes de la banda de la potencia, instrumentos incluidos. Es de un solo día y no del 95 %: otro día los tiempos pueden quedar fuera.
cooking-no-months = No se dan meses: la irradiancia se midió en el plano horizontal, y el sol de un día despejado es el del plano que lo mira.
cooking-assumed-water = El agua no es comida: los alimentos se calientan más despacio, y levantar la tapa cuesta muchos minutos.
food-potatoes = papas (patatas), en trozos
food-carrots = zanahorias, en trozos
food-cabbage = col (repollo), picada
food-rice = arroz con el doble de su masa de agua
food-eggs = huevos, enteros
food-fish = pescado (bacalao)

## Clear days through the year

# What is in brackets is a range: 3.1 MJ (2.9 – 3.3).
# As in English
year-heat = { $best } MJ ({ $range })
# As in English
year-water = { $best } L ({ $range })
year-note-balance = Estimado para el día 15 de cada mes con un cielo sin nubes (Ineichen y Perez 2002), contando las horas con { $irradiance } W/m² o más en el plano normal a la radiación directa; cada hora nublada o brumosa le quita su parte. Calor: según el balance térmico con la irradiancia de cada momento, hacia agua { $difference } K más caliente que el aire; la media de los meses es de { $mean } kWh al día. Ambiente a { $ambient } todo el año, la cocina orientada todo el día; entre paréntesis, márgenes, debidos solo a la incertidumbre del balance térmico.
year-note-water = Agua: cargas de { $load } una tras otra, cada una de { $start } a { $end } y mantenida durante { $time } (Ciochetti y Metcalf 1984, de memoria); 1 kg se toma como 1 L. La OMS constata que los virus mueren solo despacio entre 60 °C y 65 °C: siempre que pueda, lleve el agua a ebullición a borbotones, y lea la advertencia sobre el agua para beber. Solo para agua clara; el calor no elimina venenos.
fuel-name = combustible
fuel-heat = calor en un día despejado
fuel-heat-text = { $heat } MJ, la media de los meses de arriba
fuel-value = poder calorífico inferior
fuel-stove = rendimiento de la estufa o fogón
fuel-days = días al año
fuel-result = Con estos supuestos, todos ellos de quien ensaya, el mismo calor requeriría una cantidad estimada de { $best } kg de { $fuel } al año ({ $range } kg debidos solo a la incertidumbre de la calificación). Se ahorra solo en la medida en que el fuego realmente no se enciende; no se promete nada.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Las normas locales, y la práctica de quienes están habilitados para trabajar conforme a ellas, van antes que cualquier cosa de este informe. El informe califica el calor; no dice nada sobre la seguridad de la cocina ni de los alimentos.
caution-governs = Mientras una persona de habla española no haya revisado esta traducción, prevalece el texto en inglés.
caution-burns-title = Quemaduras y escaldaduras
caution-burns-text = La olla, su tapa, la cubierta transparente, la rejilla y el vapor están lo bastante calientes para quemar al menor contacto, mucho antes de que hierva el agua: el metal desnudo quema a unos 65 °C en menos de un segundo y a unos 51 °C en menos de un minuto. Use guantes secos, abra la tapa hacia el lado opuesto a usted, y haga sombra a la cocina y deje reposar la olla antes de transportarla. El vidrio caliente se raja al tocarlo el agua fría, y un tubo estrecho puede expulsar el agua hirviendo.
caution-light-title = Luz concentrada y deslumbramiento
caution-light-text = Nunca mire hacia el foco, ni al sol ni a su imagen en un reflector o panel: no hay gafas de sol que hagan eso seguro, y cerca del foco las gafas oscuras no bastan. Mantenga la cabeza y las manos fuera del haz. Aparte el reflector del sol, o hágale sombra, antes de acercar la mano a la olla. Tenga en cuenta que puede deslumbrar a vecinos, conductores y transeúntes.
caution-fire-title = Incendio
caution-fire-text = Un reflector conserva su foco mientras el sol se mueve, y así puede prender fuego a hierba seca, tela, madera o una pared hacia la que no miraba hace una hora. Instálelo sobre suelo desnudo, lejos de todo lo que arda, tenga a mano agua o arena, y cubra el reflector o póngalo boca abajo cuando no se use, también bajo techo y en el almacén. Nunca eche agua sobre grasa en llamas: tápela.
caution-unattended-title = Nunca sin vigilancia
caution-unattended-text = Alguien que conoce los peligros permanece junto a la cocina, la orienta y vigila la olla. Una olla que ha hervido hasta quedarse seca se sobrecalienta, se raja o se incendia; un frasco cerrado herméticamente o una tapa sujeta con abrazaderas pueden reventar.
caution-children-title = Niños y animales
caution-children-text = Mantenga a los niños y a los animales fuera de una línea marcada alrededor de la cocina. Ellos no ven el foco, y este puede estar a la altura de sus ojos.
caution-wind-title = Viento
caution-wind-text = Un reflector es como la vela de un barco. Sujételo con peso o átelo, y guárdelo antes de que llegue un viento fuerte: cuando vuelca, derrama agua hirviendo y lanza su foco hacia otro lugar.
caution-materials-title = Sol, calor y materiales
caution-materials-text = Quien ensaya está al sol durante horas: sombrero, sombra, agua y descansos. No use pintura, lámina, adhesivo ni metal galvanizado que se caliente cerca de los alimentos o que desprenda vapores; caliente una cocina nueva una vez sin alimentos, al aire libre.
caution-food-title = Seguridad de los alimentos
caution-food-text = Las bacterias se multiplican deprisa entre 5 °C y 60 °C. Los alimentos no deben permanecer a esas temperaturas más de dos horas en total, ni más de una hora donde el aire está por encima de 32 °C; una cocina que calienta despacio, o una nube, puede hacer que superen ese tiempo, y recalentar no deshace lo que ya se haya formado. Mida dentro del alimento: al menos 74 °C en todas sus partes. Mantenga los alimentos calientes a 60 °C o más. En caso de duda, tírelos.
caution-water-title = Agua para beber
caution-water-text = STILL TO TRANSLATE
caution-sources = STILL TO TRANSLATE

## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log }: las filas no estaban en orden de tiempo y se han ordenado
notice-repeated-times = { $log }: { $rows ->
        [one] { $rows } fila omitida
       *[other] { $rows } filas omitidas
    } con la hora de una fila anterior; vale la primera
notice-rows-left-out = { $log }: { $rows ->
        [one] { $rows } fila omitida (línea { $lines }: { $reason })
       *[other] { $rows } filas omitidas (líneas { $lines }: { $reason })
    }
# { $columns } is a list of notice-unit-assumed.
notice-units-assumed = { $count ->
        [one] no se indica la unidad de una columna, leída como { $columns }; indíquela en el encabezado, o bajo [units]
       *[other] no se indica la unidad de varias columnas, leídas como { $columns }; indíquela en el encabezado, o bajo [units]
    }
notice-unit-assumed = «{ $header }» en { $unit }
notice-beyond-calibration = { $log }: { $readings ->
        [one] { $readings } lectura
       *[other] { $readings } lecturas
    } de la columna «{ $column }» más allá de los puntos de su calibración, por la recta más cercana
notice-quantity-in-both = { $quantity } está en { $log } y en { $weather }; vale lo medido junto a la cocina
notice-weather-in-part = { $weather } cubre solo una parte de { $log }; compruebe los relojes de ambos (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log }: dividido en { $runs ->
        [one] { $runs } ensayo
       *[other] { $runs } ensayos
    } por fecha y hueco, cada uno desde el inicio del ensayo hasta su final; se omiten { $parts } y { $readings }
notice-log-split-rising = { $log }: dividido en { $runs ->
        [one] { $runs } ensayo
       *[other] { $runs } ensayos
    } por fecha y hueco, cada uno desde el agua más fría hasta la más caliente, donde sube { $rise } K o más; se omiten { $parts } y { $readings }
notice-log-parts = { $count ->
        [one] { $count } parte
       *[other] { $count } partes
    }
notice-log-readings = { $count ->
        [one] { $count } lectura
       *[other] { $count } lecturas
    }
notice-fault-values = { $log }: { $cells ->
        [one] { $cells } valor de fallo
       *[other] { $cells } valores de fallo
    } en la columna «{ $column }», tomados como ausentes; compruebe el cableado del sensor
notice-unbelievable = { $readings ->
        [one] { $log }: { $readings } lectura de la columna «{ $column }» no puede ser cierta ({ $values } { $unit }) y se toma como ausente; compruebe el sensor
       *[other] { $log }: { $readings } lecturas de la columna «{ $column }» no pueden ser ciertas ({ $values } { $unit }) y se toman como ausentes; compruebe el sensor
    }
notice-sensors-apart = { $log }: los sensores de { $quantity } difieren en más de { $apart } K en { $readings ->
        [one] { $readings } momento
       *[other] { $readings } momentos
    }; se usa su media: compruebe que ninguno haya fallado
notice-sensors-incomplete = { $log }: en { $readings ->
        [one] { $readings } momento
       *[other] { $readings } momentos
    } a uno de los sensores de { $quantity } le falta la lectura; la media de los demás da ahí un salto si difieren
notice-long-run = { $log }: las lecturas abarcan { $days } días, un ensayo es un calentamiento en un día; compruebe las fechas, fije start y end, o split = "daily"
notice-above-boiling = { $log }: el agua alcanza { $highest }, por encima de su punto de ebullición de { $boiling } aquí; compruebe el sensor, la altitud o la presión
notice-odd-noon = { $log }: el mediodía solar cae a las { $noon } del reloj; compruebe la longitud (este positivo) y la zona horaria
notice-column-not-found = { $log }: ninguna columna se reconoce como { $quantity }, magnitud que cuenta como no medida; sin leer: { $ignored }; si una de ellas la contiene, nómbrela bajo [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = leído de fuera de la carpeta de la campaña, como permitió quien hizo esto (--allow-outside): { $files }
notice-trimmed = { $log }: { $readings ->
        [one] { $readings } lectura omitida
       *[other] { $readings } lecturas omitidas
    } antes del inicio del ensayo o después de su final
notice-no-intervals = { $log }: no hay dos lecturas del agua separadas de { $shortest } a { $longest } minutos, así que no hay intervalo; registre a pasos que sumen { $minutes } minutos
notice-idle-exclusion = { $log }: el tramo excluido de { $from } a { $to } no toca ningún intervalo; compruebe sus horas
notice-stall = { $log }: el agua gana menos de la mitad de lo que dice la recta { $spans }, como bajo una nube, aunque se declara que el cielo estaba sin nubes; mire sus notas, y la orientación
# A span of clock times: from 11:20 to 11:40.
notice-span = de { $from } a { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = entre { $cold } y { $hot }
danger-measured = seguridad de los alimentos: en { $run } el agua estuvo { $zone } durante { $time }; los alimentos no deben permanecer { $zone }, donde se multiplican las bacterias, más de { $longest } en total (USDA FSIS, OMS): cocine cantidades menores, empiece con agua caliente, y deje la carne, el pescado, los huevos, la leche y el arroz cocido para un sol más fuerte u otro fogón
danger-predicted = seguridad de los alimentos: { $predicted }; los alimentos no deben permanecer { $zone }, donde se multiplican las bacterias, más de { $longest } en total (USDA FSIS, OMS): cocine cantidades menores, empiece con agua caliente, y deje la carne, el pescado, los huevos, la leche y el arroz cocido para un sol más fuerte u otro fogón
danger-both = seguridad de los alimentos: en { $run } el agua estuvo { $zone } durante { $time }, y { $predicted }; los alimentos no deben permanecer { $zone }, donde se multiplican las bacterias, más de { $longest } en total (USDA FSIS, OMS): cocine cantidades menores, empiece con agua caliente, y deje la carne, el pescado, los huevos, la leche y el arroz cocido para un sol más fuerte u otro fogón
danger-expected-never = no se espera que la carga ensayada llegue a { $hot }
danger-expected = se espera que la carga ensayada tarde alrededor de { $time } en llegar a { $hot } ({ $shortest } a { $longest })
danger-expected-open = se espera que la carga ensayada tarde alrededor de { $time } en llegar a { $hot } ({ $shortest } o más, o que no llegue)
# What the line says, within the sentences above.
notice-above-film = a temperatura ambiente, según la recta se absorbe el { $share } % de la luz solar interceptada, más de lo que devuelve una lámina reflectante (86 %; práctica habitual, sin fuente publicada); compruebe el área de intercepción, la masa de agua y la irradiancia
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = incertidumbre no indicada, por lo que se toma el instrumento más prudente: { $taken }; indique la clase o la incertidumbre bajo [instruments]
notice-instrument-taken = { $quantity } con { $class }
notice-date-differs = { $log }: la fecha del ensayo se da como { $stated }, sus lecturas comienzan el { $found }; valen las lecturas

## How the logs were read

quantity-time = hora
quantity-date = fecha
quantity-clock = hora del reloj
quantity-elapsed = tiempo transcurrido
quantity-water = temperatura del agua
quantity-vessel = temperatura del recipiente
quantity-ambient = temperatura ambiente
quantity-irradiance = irradiancia
quantity-wind = velocidad del viento
skip-before-header = antes del encabezado
skip-units-row = unidades bajo el encabezado
skip-between = entre el encabezado y las lecturas
skip-remark = STILL TO TRANSLATE
skip-blank = en blanco
skip-header-again = encabezado repetido
skip-before-header-again = antes de un encabezado repetido
skip-footer = después de la última lectura
skip-cut-off = cortada al final del archivo
skipped-more = { $lines } y { $more } más
skipped-lines = STILL TO TRANSLATE
# Labels and texts of a list of facts about a log.
log-form = formato
log-form-text = { $written_in }; encabezado en la línea { $line }; signo decimal: { $mark }
log-time-text = hora: { $format }, como en «{ $example }»; zona { $zone }
log-clock = reloj
log-clock-text = { $seconds } s sumados a todas las horas
log-not-read = sin leer
log-readings = { $readings ->
        [one] { $readings } lectura de { $from } a { $to }
       *[other] { $readings } lecturas de { $from } a { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } lectura de { $from } a { $to }, por lo general una cada { $step } s
       *[other] { $readings } lecturas de { $from } a { $to }, por lo general una cada { $step } s
    }
# How a column was understood: water temperature (synonym), °C (header).
# As in English
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
# As in English
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }); { $corrections }
found-campaign-file = archivo de campaña
found-header = encabezado
found-synonym = sinónimo
found-elimination = nada más en un registro meteorológico
unit-header = encabezado
unit-units-row = fila de unidades
unit-campaign-file = archivo de campaña
unit-cells = celdas
unit-assumed = no indicada, supuesta
corrected-vessel = recipiente { $vessel }, { $load }
corrected-sensitivity = sensibilidad { $sensitivity } { $unit } por W/m²
corrected-line-plus = calibrada: lectura × { $gain } + { $offset } { $unit }
corrected-line-minus = calibrada: lectura × { $gain } − { $offset } { $unit }
corrected-points = calibrada por puntos, { $unit }: { $points }
# How the file is written: what it is, then what separates its cells.
written-sheet = hoja de cálculo, hoja «{ $sheet }»
written-text = { $encoding }, celdas separadas por { $delimiter }
written-gzip = gzip, { $encoding }, celdas separadas por { $delimiter }
encoding-marked = { $name } con marca de orden de bytes
encoding-stated = { $name } (archivo de campaña)
delimiter-comma = coma
delimiter-semicolon = punto y coma
delimiter-tab = tabulador
delimiter-pipe = barra vertical
delimiter-space = uno o más espacios
delimiter-wide-space = dos o más espacios
mark-comma = coma
mark-point = punto
mark-thousands = { $decimal }, millares «{ $mark }» (archivo de campaña)
# How times are written: date and time, newest first.
time-newest-first = { $form }, la más reciente primero
time-date-and-time = fecha y hora
# { $order } is year-month-day or the like, { $from } one of order-from-….
# As in English
time-ordered = { $order } ({ $from })
time-clock-only = hora del reloj, la primera el { $date }
time-stopwatch = tiempo transcurrido desde el inicio del ensayo
time-since-1970 = { $unit } desde 1970
time-serial = días de hoja de cálculo desde 1899-12-30
time-elapsed = { $unit } transcurridos desde el inicio del ensayo
zone-epoch = UTC (desde 1970)
zone-start = la del inicio del ensayo
zone-offsets = desfase en cada fila
# { $zone } is a name such as Europe/Madrid, { $from } where it stands.
# As in English
zone-named = { $zone } ({ $from })
# As in English
zone-local = local
from-header = encabezado
from-units-row = fila de unidades
from-line-before = línea anterior al encabezado
from-campaign-file = archivo de campaña
from-site = lugar
order-only-days = el único orden en que cada fila es un día
order-first-row = la primera fila
order-same-day = el mismo día en cualquier orden
order-only-following = el único orden en que un día sigue a otro
order-run-date = la fecha del ensayo
order-year-month-day = año-mes-día
order-day-month-year = día-mes-año
order-month-day-year = mes-día-año

# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = diferencia de temperatura Td, agua menos ambiente, K
# Upright, up to 45 letters.
figure-power = potencia de cocción estandarizada Ps, W
figure-power-estimated = Ps, W, con irradiancia estimada
figure-power-short = STILL TO TRANSLATE
figure-power-short-estimated = STILL TO TRANSLATE
# In an empty figure.
figure-no-interval = ningún intervalo completo, así que no hay nada que representar
figure-nothing-to-plot = irradiancia no medida, así que no hay nada que representar
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W a 50 K

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = diferencia de temperatura Td, K
figure-start = hora local al inicio
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = esperado, desviaciones estándar
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps menos recta, W
figure-band = recta con su banda, W
# A day in a key.
figure-day = { $day } de { $month }

## Figures: a run over the day

# Beside a curve.
figure-water = agua
figure-ambient = ambiente
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

comparison-kind = Comparación de cocinas solares
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = STILL TO TRANSLATE
# { $sites }: a list of names of places, or comparison-sites. { $dates }: a date, or
# comparison-dates.
comparison-sites = { $count } lugares
# In place of a long list of those who tested.
comparison-authors = STILL TO TRANSLATE
comparison-statement = Los resultados se refieren solo a las cocinas tal como se ensayaron. Reprodúzcase solo íntegramente.
# At the head of every page.
comparison-mark-mixed = Procedimientos o límites distintos
comparison-mark-not-valid = STILL TO TRANSLATE
comparison-mark-indicative = Indicativo en parte
comparison-mark-invented = Datos inventados, para demostración
comparison-end = Fin del informe { $number }

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
comparison-span = { $from } a { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = STILL TO TRANSLATE
# The sentence that follows is of that.
verdict-common = STILL TO TRANSLATE
verdict-untold = STILL TO TRANSLATE
# The sentence that follows is of that.
verdict-shown-more = { $second } da { $difference } W más que { $first } ({ $interval } W): una diferencia real.
verdict-shown-less = { $second } da { $difference } W menos que { $first } ({ $interval } W): una diferencia real.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } da { $difference } W más que { $first } ({ $interval } W), un { $share } %: una diferencia real.
verdict-shown-less-share = { $second } da { $difference } W menos que { $first } ({ $interval } W), un { $share } %: una diferencia real.
verdict-one-day-more = { $second } dio { $difference } W más que { $first } ({ $interval } W) al ensayarse, pero no en varios días cada una, de modo que los días por sí solos pueden explicarlo: ensaye ambas de nuevo en otros días.
verdict-one-day-less = { $second } dio { $difference } W menos que { $first } ({ $interval } W) al ensayarse, pero no en varios días cada una, de modo que los días por sí solos pueden explicarlo: ensaye ambas de nuevo en otros días.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = STILL TO TRANSLATE
verdict-by-chance-less = STILL TO TRANSLATE
# One of the sentences that begin with needed- may follow.
verdict-not-shown-more = No se pudo demostrar ninguna diferencia entre { $second } y { $first }: { $difference } W más, y cualquier valor de { $interval } W es compatible con los datos.
verdict-not-shown-less = No se pudo demostrar ninguna diferencia entre { $second } y { $first }: { $difference } W menos, y cualquier valor de { $interval } W es compatible con los datos.
# "One" is a difference, in the next three.
needed-other-days = Ensaye ambas de nuevo en otros días.
# Before one of those that begin with needed-; "one" there is a difference of these two.
needed-of = STILL TO TRANSLATE
needed-none = Una de { $sought } W muy probablemente se habría visto.
needed-days = Con { $days ->
        [one] { $days } día más
       *[other] { $days } días más
    } como los ensayados, de cada una, muy probablemente se demostraría una de { $sought } W.
needed-no-number = Más días por sí solos difícilmente demostrarían una de { $sought } W: los días, o los instrumentos que no son el mismo según su id, difieren demasiado.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = Sin un balance térmico de ambas no se puede saber de qué viene una diferencia.
# The next six are followed by cause-numbers.
cause-no-difference = Como no se demuestra ninguna diferencia, no se nombra causa alguna.
cause-not-shown = No queda demostrado de qué viene la diferencia.
cause-more-gain = { $second } capta más luz solar que { $first }, como tras un cambio de la óptica.
cause-less-gain = { $second } capta menos luz solar que { $first }, como tras un cambio de la óptica.
cause-more-loss = { $second } pierde más calor por cada kelvin que { $first }, como con un aislamiento peor, más viento o sin tapa.
cause-less-loss = { $second } pierde menos calor por cada kelvin que { $first }, como con un aislamiento mejor, menos viento o con tapa.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } menos { $first } según los balances térmicos: ganancia { $gain } m² ({ $gain_interval } m²), pérdida { $loss } W/K ({ $loss_interval } W/K).
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
departure-procedure = procedimiento { $here } donde la primera tiene { $there }
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
departure-none = ninguno
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

# Means over the used intervals.
ratings-conforms = conforme
ratings-conforms-with-notes = conforme con notas
ratings-indicative = solo indicativa
ratings-not-valid = no válida
ratings-no-rating = sin calificación
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
# As in English
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
# As in English
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – nunca)
heating-never = no llega

## Comparison: caution on page one

caution-compared = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y estas calificaciones no dicen nada sobre la seguridad de los alimentos. Lea las advertencias de la sección { $section } antes de cocinar. Las normas locales y la práctica de los profesionales habilitados van primero.

## Comparison: differences

section-differences = STILL TO TRANSLATE
# Labels, with little room.
difference-verdict = STILL TO TRANSLATE
difference-p = STILL TO TRANSLATE
difference-method = STILL TO TRANSLATE
# A difference with its 95 % interval, in watts.
difference-with-interval = STILL TO TRANSLATE
# Whether the difference is real.
difference-apart = cada una por sus propios días
difference-paired = emparejadas por día, { $days ->
        [one] { $days } día
       *[other] { $days } días
    }
# As in English
difference-real = real
difference-not-shown = no demostrada
# In place of real and not shown, where irradiance differed.
difference-scaled = soles distintos
# As in English
difference-of-ratings = Ps(50)
difference-of-common = potencia a 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = STILL TO TRANSLATE
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
page-comparison-source = fuente
page-comparison-shared = en la diferencia
page-comparison-apart = si nada fuera común
pair-budget-scatter = dispersión y días
pair-budget-combined = combinada
pair-budget-expanded = expandida, 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = Las campañas
# Of each campaign one after the other, each a line of its own.
campaign-cooker = STILL TO TRANSLATE
campaign-cost = STILL TO TRANSLATE
# As in English
comparison-test-text = { $dates }, { $runs ->
        [one] { $runs } ensayo
       *[other] { $runs } ensayos
    }; { $site }, { $elevation } m; ensayada por { $tester }
comparison-not-stated = no indicado
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
# As in English
comparison-instrument = { $quantity }: { $instrument }, { $uncertainty }

## Comparison: method and provenance

section-method = Método y procedencia
page-comparison-made-with = Hecho con
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 para cada calificación; JCGM 100:2008 para las diferencias
comparison-note-ratings = Cada calificación es la de la práctica: Ps(50), leída de la recta en Td = 50 K. Escala la potencia en proporción a 700 W/m², también las pérdidas. Donde la irradiancia media de ambos ensayos es semejante, la diferencia que se llama real o no demostrada es la de las calificaciones.
comparison-note-suns = Donde la irradiancia media difiere en más de { $percent } %, es la diferencia de las potencias a 700 W/m² y 50 K según los balances térmicos. Un balance térmico es P = g·G − u·Td, ajustado a cada intervalo con lecturas fiables. Supone que la ganancia g y la pérdida u son las mismas bajo ambos soles; no se corrige ningún viento.
comparison-note-uncertainty = La incertidumbre de una diferencia contiene la dispersión y los días de ambas campañas, cada una dejando fuera un día cada vez, y lo que sus instrumentos no comparten. Los instrumentos son uno y el mismo donde los archivos de campaña dan un mismo id; los que no tienen id cuentan como distintos, lo que aumenta la incertidumbre. El error de una estimación de la irradiancia es uno solo donde ambas se estimaron del mismo modo, en un mismo lugar y los mismos días. El calor específico es común a todas.
comparison-note-paired = STILL TO TRANSLATE
comparison-note-p = p es la probabilidad de una diferencia tan grande si no hay ninguna (t de Student, Cochran & Cox); la p corregida tiene en cuenta { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    } por el método de Holm. Una diferencia se llama real donde la p corregida es menor que 0,05 y ambas se ensayaron en varios días.
comparison-note-groups = STILL TO TRANSLATE
comparison-note-causes = De qué viene una diferencia lo dicen las diferencias de g y de u, cada una con dispersión, días e instrumentos. Se nombra una causa donde una diferencia es real y la p de g o de u es menor que 0,05; estas p no están corregidas por el número de pares.
comparison-note-needed = Cuántos días más hacen falta: para una probabilidad de cuatro entre cinco de demostrar una diferencia de ese tamaño al 95 %, si los días y la dispersión siguen como se vieron.
comparison-note-reports = Cada calificación tiene su propio informe, con sus lecturas, condiciones y balance de incertidumbre.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
plan-day = { $weekday }, { $date }
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
weekday-1 = lunes
weekday-2 = martes
weekday-3 = miércoles
weekday-4 = jueves
weekday-5 = viernes
weekday-6 = sábado
weekday-7 = domingo
# { $zone }: the name of a time zone, such as Europe/Madrid.
sheet-subtitle = { $day } · { $site } · reloj de { $zone }
sheet-mark = Datos inventados, para demostración

## Field sheet: sun, water, aiming
#
# What stands at the left has room for 13 letters, else it goes onto two lines.

plan-sun = sol
plan-sun-course = sale { $rise }, mediodía solar { $noon }, se pone { $set }
plan-sun-no-rise = no sale, mediodía solar { $noon }, se pone { $set }
plan-sun-no-set = sale { $rise }, mediodía solar { $noon }, no se pone
plan-sun-neither = no sale, mediodía solar { $noon }, no se pone
plan-sun-always = no se pone; mediodía solar { $noon }
plan-sun-never = no sale
# The hours about noon in which the practice lets one test.
plan-window = ventana solar
plan-window-text = de { $clocks } según el reloj ({ $from } a { $to } de hora solar)
# Two times of day.
plan-clocks = { $from } a { $to }
plan-clear-sky = cielo claro
# plan-too-much may follow, after a semicolon.
plan-enough-all-through = { $least } W/m² o más en el plano normal a la radiación directa de { $clocks }, es decir, durante toda la ventana solar
plan-enough-in-window = { $least } W/m² o más en el plano normal a la radiación directa de { $clocks }, en la ventana solar de { $usable }
plan-too-much = por encima de { $most } W/m² los intervalos también se descartan, y un cielo muy despejado da aquí hasta { $highest }
plan-enough-outside = { $least } W/m² solo de { $clocks }, fuera de la ventana solar: no se puede utilizar ningún intervalo de este día
plan-never-enough = nunca llega a { $least } W/m² (como máximo { $highest }): no se puede utilizar ningún intervalo de este día
plan-water = agua
# { $load }, { $each }, { $vessel }: masses with their unit. plan-load-stated may follow, after
# a semicolon.
plan-load-one = { $load }, { $each } por cada uno de { $area } m², en un recipiente
plan-load-several = { $load }, { $each } por cada uno de { $area } m², { $vessel } en cada uno de { $vessels } recipientes
plan-load-stated = el archivo de campaña dice { $stated }
# From and up to which temperature of the water its readings count.
plan-start = cuenta desde
plan-start-above = { $difference } por encima del aire, por ejemplo { $start } con aire a { $air }
plan-stop = cuenta hasta
plan-stop-text = { $stop }; aquí el agua hierve a { $boiling }
# In the unit of the tester's thermometer, with °C or K in brackets.
# As in English
plan-temperature = { $temperature } { $unit } ({ $celsius } °C)
# As in English
plan-difference = { $difference } { $unit } ({ $kelvin } K)
# A run of the dry vessel, or of a load that cools: when it begins, what is read, when it ends.
plan-begin = empezar
plan-read = leer
plan-end = terminar
plan-high-sun = sol alto
# { $clocks }: two times of day. { $from }, { $to }: the same by the sun.
plan-high-sun-text = de { $clocks } según el reloj ({ $from } a { $to } de hora solar), cuando el sol está alto y cambia menos; práctica habitual, sin fuente publicada
plan-high-sun-most = hasta { $highest } W/m² en el plano normal a la radiación directa
plan-high-sun-weak = como mucho { $highest } W/m² en el plano normal a la radiación directa: una meseta se busca solo por encima de { $least } W/m², así que elija otro día para ella
plan-high-sun-none = como mucho { $highest } W/m² en el plano normal a la radiación directa: ninguna hora de este día sirve
plan-dry-begin = con el recipiente vacío y seco, tan frío como el aire, con la tapa puesta, y la cocina orientada
plan-dry-read = el recipiente cada 5 a 20 min, el aire al menos una de cada dos veces, hasta que el recipiente lleve media hora sin cambiar; una hora con un termómetro de aguja de 10 °F o 5 °C por división
plan-dry-read-sun = el recipiente y la irradiancia cada 5 a 20 min, el aire al menos una de cada dos veces, hasta que el recipiente lleve media hora sin cambiar; una hora con un termómetro de aguja de 10 °F o 5 °C por división
plan-cooling-load = tanta como en los ensayos de calentamiento, { $load }
plan-cooling-load-unstated = tanta como en los ensayos de calentamiento; pésela
plan-cooling-begin = con el agua cerca de hervir (aquí hierve a { $boiling }), la tapa puesta, la cocina a la sombra o apartada del sol
plan-cooling-read = el agua cada { $minutes } min, el aire al menos una de cada dos veces; la irradiancia no hace falta
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = cuando el agua esté { $difference } por encima del aire, por ejemplo { $end } con aire a { $air }
# To turn the cooker to the sun.
plan-aim = orientar
plan-aim-unknown = STILL TO TRANSLATE
plan-aim-no-time = no se puede utilizar ninguna hora de este día
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = a las { $clocks } y luego ya no más: { $angle }° bastan para toda la ventana
plan-aim-drive = todo el tiempo, con un mecanismo de seguimiento: el sol se mueve { $angle }° en menos de { $time }
plan-aim-at = a las { $clocks }; en ese tiempo ({ $minutes } min) el sol se mueve { $angle }°, el semiángulo de aceptación
plan-aim-every = cada { $minutes } min desde las { $first }; en ese tiempo el sol se mueve { $angle }°, el semiángulo de aceptación

## Field sheet: what is missing

# Two of these follow each other. { $missing }: "9 more intervals and 1 more day".
plan-missing = Aún faltan: { $missing }.
plan-missing-nothing = Ya hay suficientes intervalos y días.
plan-gives-none = Este día no puede dar ninguno.
plan-gives = Este día puede dar como máximo { $most ->
        [one] { $most } intervalo de { $minutes } min
       *[other] { $most } intervalos de { $minutes } min
    }.
plan-gives-by-heating = Este día puede dar como máximo { $most ->
        [one] { $most } intervalo de { $minutes } min
       *[other] { $most } intervalos de { $minutes } min
    }; un calentamiento de esta carga, alrededor de { $heating }, después empiece de nuevo con agua fresca.

## Field sheet: before the first reading

check-shade = ninguna sombra sobre la cocina hasta el final
check-wind = viento flojo: el humo se desvía, las hojas quietas
check-weighed = agua pesada, no medida a tazas
check-sensor = sensor en el agua, a 10 mm del fondo, sin tocar la pared
check-lid = tapa puesta, y se queda puesta
check-air = termómetro del aire a la sombra, fuera de la luz de la cocina
check-irradiance = sensor de irradiancia limpio y de cara al sol
check-irradiance-flat = sensor de irradiancia limpio y tendido en horizontal, junto a la cocina
check-aimed = orientada, y nada que arda cerca del foco
check-empty = recipiente vacío, seco y limpio: sin agua, comida ni grasa
check-no-plastic = sin plástico ni recubrimiento antiadherente: pasa mucho de 100 °C
check-dial = termómetro dentro o encima del recipiente, fuera del haz; se queda ahí
check-mirrors = espejos de la caja tapados o plegados, para sus figuras de mérito
check-no-sun = nada de sol sobre la cocina hasta el final: a la sombra o apartada
check-in-place = olla en su sitio dentro de la cocina, como cuando calienta
# Lines to write on.
sheet-tester = ensaya
sheet-weighed = agua pesada, kg
sheet-began = primera lectura, hora

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = hora
sheet-after = minutos
sheet-vessel = recipiente, { $unit }
sheet-water = agua, { $unit }
sheet-air = aire, { $unit }
# Bft: Beaufort.
sheet-wind = viento, Bft
sheet-sky = cielo: claro o nube
sheet-irradiance = irrad., W/m²
sheet-expected = esperada, { $unit }
sheet-aim = orientar
sheet-notes = notas

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Viento a ojo, Beaufort (WMO-No. 8): { $forces }.
# As in English
sheet-force = { $number } { $sign } ({ $speeds } m/s)
# What one sees of the wind on land, at each number of the Beaufort scale.
wind-sign-0 = el humo sube recto
wind-sign-1 = el humo se desvía, las veletas quietas
wind-sign-2 = se nota en la cara, susurran las hojas
wind-sign-3 = hojas y ramitas se mueven sin cesar
wind-sign-4 = se levantan polvo y papeles sueltos
wind-sign-5 = se mecen los árboles pequeños
wind-sign-6 = se mueven las ramas grandes
wind-sign-7 = se mueven árboles enteros
wind-sign-8 = se rompen ramitas
# What the column of expected temperatures rests on. { $start }, { $air }: temperatures.
plan-expected = Lo que se espera de la cocina según su calificación hasta ahora, Ps(50) = { $power } W ± { $expanded } W (95 %): { $load } calentados desde { $start } con cielo despejado, con aire a { $air } como en sus ensayos; con su margen del 95 %. Un agua muy por debajo de eso indica bruma, viento, una mala orientación o una tapa suelta.
# The models behind the numbers.
plan-models = Cielo despejado según Ineichen y Perez 2002 para { $elevation } m, turbidez de Linke { $turbidity } (habitual con cielo despejado); la bruma y el polvo dan menos. Sol según NREL/TP-560-34302; un horizonte llano.
plan-models-stated = Cielo despejado según Ineichen y Perez 2002 para { $elevation } m, turbidez de Linke { $turbidity } (la indicada); la bruma y el polvo dan menos. Sol según NREL/TP-560-34302; un horizonte llano.
page-sheet-checks = STILL TO TRANSLATE
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = STILL TO TRANSLATE
page-sheet-caution = Advertencia.
caution-field-sheet = Nunca mire hacia el foco ni al sol. El metal caliente y el vapor queman: guantes, tapa hacia el lado opuesto a usted. Mantenga lejos a los niños y todo lo que arda; permanezca junto a la cocina; apártela del sol antes de meter la mano; átela contra el viento. Sombra y agua para usted. Tire el agua del ensayo. Las normas locales y la práctica de los profesionales habilitados van primero.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = Un recipiente vacío pasa mucho de 100 °C: quema al tocarlo y sigue caliente mucho después. El plástico se funde y los recubrimientos echan humos: ni lo uno ni lo otro. Nunca eche agua en él mientras está caliente: salpica y se agrieta. La hierba seca, la tela y los restos de grasa se prenden: suelo despejado, agua o arena a mano, y alguien que se quede. Nunca mire hacia el foco ni al sol; aparte la cocina de él antes de meter la mano; guantes secos. Mantenga lejos a los niños; átela contra el viento. Sombra y agua para usted. Las normas locales y la práctica de los profesionales habilitados van primero.
caution-field-sheet-cooling = Se lleva una olla de agua casi hirviendo: camino despejado, nadie en él, la tapa sujeta, las dos manos con guantes secos; mejor dejarla en el suelo que apurarse. El vapor quema: tapa hacia el lado opuesto a usted. Nunca mire hacia el foco ni al sol; aparte la cocina de él, o póngale sombra, antes de meter la mano, y mire adónde va entonces el foco. Mantenga lejos a los niños; permanezca junto a la cocina. Tire el agua del ensayo. Las normas locales y la práctica de los profesionales habilitados van primero.

## Kinds of run, and what vessels store

run-kind-water = calentamiento de agua
run-kind-cooling = enfriamiento, a la sombra
run-kind-dry = recipiente vacío
vessel-heat-stated = indicada en el archivo de campaña
vessel-heat-weighed = { $mass } kg de { $material } a { $heat } J/(kg K) (EN 12524:2000, tal como la recoge una biblioteca abierta)
material-aluminium = aluminio
material-cast-iron = hierro fundido
material-steel = acero
material-stainless-steel = acero inoxidable
material-copper = cobre
material-glass = vidrio
material-ceramic = cerámica
material-fired-clay = barro cocido
tested-vessel-heat = capacidad calorífica de los recipientes
# As in English
tested-vessel-heat-text = { $heat } J/K: { $basis }
tested-loss-area = superficie de los recipientes que pierde calor
# As in English
tested-loss-area-text = { $area } m²
tested-no-water = ninguna: ningún ensayo de esta campaña calienta agua
tested-vessel-temperature = temperatura del recipiente
error-vessel-temperature = termómetro del recipiente
error-vessel-heat = capacidad calorífica de los recipientes
known-vessel-heat = dentro de un { $percent } % de lo indicado
budget-not-told-apart = no se da por separado en este informe
tested-instruments-note-dry = STILL TO TRANSLATE

## Page one of a campaign that heats no water

report-kind-without-water = Informe de ensayos de una cocina solar, sin calificación
headline-label-none = Aún sin cifra
headline-no-water = STILL TO TRANSLATE
headline-spread = ± es para el 95 %: días, lecturas, instrumentos.
headline-spread-one-day = ± es de un solo día, lecturas e instrumentos; no es del 95 %.
headline-dry-plateau = Con { $irradiance } W/m² el recipiente vacío llegó a { $vessel }: { $difference } K por encima del aire, que estaba a { $ambient }.
fact-reached = STILL TO TRANSLATE
fact-good-for = STILL TO TRANSLATE
fact-not-with = STILL TO TRANSLATE
headline-no-water-means = Nada de esto es una potencia de cocción. Caliente una carga de agua pesada para saber con qué rapidez cocina la cocina.
headline-nothing-drawn = No se pudo representar nada: los hallazgos dicen por qué.

## All figures at a glance (page two)

summary-title = Todas las cifras de un vistazo
# Headers of a table of four columns.
page-summary-figure = cifra
page-summary-value = valor ± semiancho (95 %)
page-summary-good-for = sirve para
page-summary-not-with = no comparar con
summary-one-day = (un día)
summary-indicative = (indicativa)
summary-note = Cada ± es para el 95 %: días, lecturas (con su dispersión donde se ajusta una recta) e instrumentos, con la incertidumbre que se indica o se supone. Las áreas cuentan como exactas.
summary-note-one-day = Donde dice «un día», lo que haría otro día no está en el ±.
summary-note-indicative = Donde dice «indicativa», sus condiciones no fueron las de su procedimiento, o la irradiancia es estimada.
figure-ps50 = potencia de cocción estandarizada
figure-ps50-good-for = comparar cocinas calificadas según la misma práctica
figure-ps50-not-with = la potencia con otra irradiancia, o calificaciones según otra práctica
figure-gain = ganancia del sol
figure-gain-good-for = decir la potencia con cualquier irradiancia, junto con u
figure-gain-not-with = la ganancia según un sensor en otro plano
figure-loss = pérdida al aire
figure-loss-good-for = ver qué aporta el aislamiento
figure-loss-not-with = la pérdida con otro viento, o por cada m²
figure-opto-thermal-ratio = cociente optotérmico
figure-opto-thermal-ratio-good-for = saber cuánto puede calentarse una carga, sea cual sea su tamaño
figure-opto-thermal-ratio-not-with = F1, que es de la cocina vacía
figure-dry-difference = recipiente vacío por encima del aire, por cada W/m²
figure-dry-difference-good-for = comparar versiones de una cocina con la misma olla
figure-dry-difference-not-with = otras ollas, o un sensor en otro plano; no es una potencia de cocción
figure-f1 = primera figura de mérito
figure-f1-good-for = comparar cocinas de caja, vacías
figure-f1-not-with = valores según un sensor que mira al sol, o con los espejos descubiertos
figure-f2 = segunda figura de mérito
figure-f2-good-for = comparar cocinas de caja con carga completa
figure-f2-not-with = otras cargas, u otros extremos de la subida
figure-box-boiling = tiempo desde el ambiente hasta hervir
figure-box-boiling-good-for = decir cuánto tarda esta carga, con este sol
figure-box-boiling-not-with = tiempos con otra carga, otro sol u otra altitud
figure-time-constant = constante de tiempo del enfriamiento
figure-time-constant-good-for = saber cuánto tiempo se mantiene caliente esta carga a la sombra
figure-time-constant-not-with = otras cargas: crece con el agua
figure-loss-factor = factor de pérdidas
figure-loss-factor-good-for = comparar recipientes y sus envolturas
figure-loss-factor-not-with = factores de otra superficie, o con otro viento
figure-optical-factor = factor óptico
figure-optical-factor-good-for = comparar espejos y orientación
figure-optical-factor-not-with = factores según la irradiancia directa, donde esta es la global
figure-dish-boiling = tiempo desde el ambiente hasta hervir
figure-dish-boiling-good-for = decir cuánto tarda esta carga, con este sol
figure-dish-boiling-not-with = tiempos con otra carga, otro sol u otra altitud
figure-energy = eficiencia energética
figure-energy-good-for = comparar ensayos en el mismo margen de temperaturas del agua
figure-energy-not-with = la eficiencia en otro margen, o con una carga fría
figure-exergy = eficiencia exergética
figure-exergy-good-for = lo mismo que la energética, pero el agua caliente cuenta más
figure-exergy-not-with = valores con otra temperatura del sol u otro margen
figure-peak-exergy = exergía máxima
figure-peak-exergy-good-for = comparar cocinas de un mismo tamaño bajo el mismo sol
figure-peak-exergy-not-with = máximos con otra irradiancia
figure-quality-factor = factor de calidad
figure-quality-factor-good-for = ver dónde se encuentran ganancia y pérdida
figure-quality-factor-not-with = artículos que definen la pérdida de otro modo

## Procedures beside the rating

# As in English
procedure-label = { $name }, { $symbol }
# { $value } with its ±, or alone; { $unit }, or nothing.
# As in English
procedure-value = { $value } { $unit }
# An interval that reaches further on one side.
procedure-value-between = { $value } ({ $lower } a { $upper })
procedure-value-alone = { $value } (± no se da)
procedure-spread = STILL TO TRANSLATE
procedure-spread-one-day = STILL TO TRANSLATE
page-procedure-quantity = magnitud
procedure-boiling = El tiempo hasta hervir es para { $load } de agua de { $ambient } a { $boiling }, su punto de ebullición aquí, con { $irradiance } W/m² constantes: las medias del ensayo. Está calculado, no cronometrado.
# { $limit }, °C.
evaporation = por encima de { $limit } °C una parte del calor se va en vapor, lo que ninguna temperatura muestra: las cifras valen para una tapa cerrada y cuentan el vapor como pérdida
evaporation-remedy = deje puesta la tapa; compare solo ensayos que terminen a temperaturas parecidas

## Dry vessel

section-dry-vessel = Recipiente vacío
dry-what = Un recipiente vacío y oscuro, o una placa desnuda, se deja al sol hasta que ya no se calienta más. Su temperatura por encima del aire, por cada W/m², contrapone la luz recibida a las pérdidas. No es una potencia de cocción.
dry-plane-normal = La irradiancia es la de un sensor que miraba al sol.
dry-plane-horizontal = La irradiancia es la de un sensor tendido en horizontal: compare solo con otros ensayos que lo tuvieran así.
dry-plane-estimated = La irradiancia es estimada.
dry-plane-not-stated = Nadie indica cómo estaba puesto el sensor de irradiancia: no compare con ningún otro ensayo.
# { $runs }: more than one.
dry-mean-of = El valor es la media de { $runs ->
    [one] { $runs } ensayo
   *[other] { $runs } ensayos
} con meseta.
# Headers of a table with a row a run: there is little room.
dry-head-run = ensayo
dry-head-plateau = meseta, °C
dry-head-ambient = aire, °C
dry-head-irradiance = sol, W/m²
# As in English
dry-head-difference = K m²/W
dry-head-initial = subida inicial, K/min
dry-head-reached = min hasta { $level }
dry-caption = Temperatura del recipiente vacío desde el inicio de cada ensayo; trazo grueso: la meseta.
dry-alt = Gráfico de líneas de la temperatura del recipiente vacío frente al tiempo, de { $runs ->
    [one] { $runs } ensayo
   *[other] { $runs } ensayos
}. La lectura más alta es de { $highest }.
dry-axis-time = tiempo desde la primera lectura, min
dry-axis-vessel = recipiente, °C
dry-key-vessel = lecturas
dry-key-plateau = meseta
dry-source = STILL TO TRANSLATE
dry-no-vessel = el registro no tiene la temperatura del recipiente
dry-no-vessel-remedy = nombre la columna del recipiente como vessel_temperature bajo [columns]; si el recipiente tenía agua, escriba kind = "water"
dry-no-irradiance = el registro no tiene irradiancia, así que la meseta no se puede referir al sol
dry-no-irradiance-remedy = anote la irradiancia con cada lectura, o declare tramos sin nubes y estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = las lecturas que cuentan no cubren { $minutes } min sin hueco, lo que pide una meseta con este termómetro
dry-too-short-remedy = siga leyendo, al menos cada veinte minutos, hasta que la temperatura se haya mantenido durante { $minutes } min
dry-sun-unsteady = el sol nunca se mantuvo dentro de ± 20 W/m² de su media durante { $minutes } min
dry-sun-unsteady-remedy = ensaye con cielo despejado en torno al mediodía solar
dry-sun-weak = el sol era constante, pero con { $highest } W/m² como máximo, por debajo de 600 W/m²
dry-sun-weak-remedy = ensaye en torno al mediodía solar, en una estación con más sol, o sin bruma
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = sin meseta: en su tramo constante más caliente, a { $vessel } °C, el recipiente aún subía { $rate } K/min
dry-still-falls = sin meseta: en su tramo constante más caliente, a { $vessel } °C, el recipiente bajaba { $rate } K/min
dry-still-moves-remedy = empiece antes, oriente de nuevo y siga hasta que se mantenga

## Box cooker

section-box-cooker = Figuras de mérito de una cocina de caja
box-what = F1 = (Tp − Ta)/H: cuánto se eleva la caja vacía sobre el aire por cada W/m² en el plano horizontal. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))]: qué tan bien pasa su calor a una carga completa, según el tiempo τ en que el agua sube ΔT; T, Ta y H son medias de ese tiempo.
box-grade = grado
box-grade-a = STILL TO TRANSLATE
box-grade-none = STILL TO TRANSLATE
box-rests-on-dry = F1 se apoya en { $runs ->
    [one] { $runs } ensayo en seco
   *[other] { $runs } ensayos en seco
} con meseta.
box-rests-on-water = F2 se apoya en { $runs ->
    [one] { $runs } subida
   *[other] { $runs } subidas
} del agua de { $from } a { $to }.
box-caption = Agua frente al tiempo desde que pasó la primera temperatura de la subida; trazo grueso: lo que dan F1 y F2 con un sol constante de la misma media.
box-alt = Gráfico de líneas de la temperatura del agua frente al tiempo, de { $runs ->
    [one] { $runs } subida
   *[other] { $runs } subidas
} de { $from } a { $to }, con las curvas que dan F1 y F2.
box-axis-time = tiempo desde el inicio de la subida, min
box-axis-water = agua, °C
box-key-water = lecturas
box-key-told = según F1 y F2
box-source = STILL TO TRANSLATE
box-no-dry-run = no hay ningún ensayo en seco, así que no hay F1, ni F2, que se apoya en ella
box-no-dry-run-remedy = deje la caja vacía al sol en torno al mediodía y registre su placa: kind = "dry"
box-no-plateau = ningún ensayo en seco tiene meseta, así que no hay F1, ni F2
box-no-plateau-remedy = mire qué les falta a los ensayos en seco
box-plane-normal = la irradiancia se midió mirando al sol; F1 y F2 están definidas para un sensor tendido en horizontal
box-plane-not-stated = nadie indica cómo estaba puesto el sensor de irradiancia; F1 y F2 están definidas para uno tendido en horizontal
box-plane-estimated = la irradiancia es estimada; F1 y F2 están definidas para un sensor tendido en horizontal
box-plane-remedy = ponga el sensor en horizontal junto a la caja, e indique plane = "horizontal"
box-cover-mirrors = F1 y F2 son para una caja cuyos espejos reflectores, si los tiene, están cubiertos; ningún registro lo muestra
box-cover-mirrors-remedy = cúbralos en estos ensayos, y dígalo en las notas
box-no-water-run = ningún ensayo calienta agua, así que no hay F2
box-no-heating = no hay ninguna subida de { $from } a { $to } °C sin hueco y con irradiancia en { $runs ->
    [one] { $runs } ensayo
   *[other] { $runs } ensayos
} con agua, así que no hay F2
box-no-heating-remedy = empiece por debajo de { $from } °C, siga hasta pasar de { $to } °C, y lea al menos cada veinte minutos
box-runs-left-out = ensayos con agua sin una subida entera de { $from } a { $to } °C, que no cuentan: { $runs }
# Loads in kg/m².
box-load-off = la carga fue de { $load } kg/m²; una carga completa es de unos { $full } kg/m²
box-load-off-remedy = pese { $full } kg de agua por cada m² de vidrio; la calificación pide 7 kg por cada m² de área de intercepción, así que una sola carga no siempre cumple ambas
# Both in K.
box-beyond-reach = en { $rises ->
    [one] { $rises } subida
   *[other] { $rises } subidas
} el agua llegó a { $end } K por encima del aire, lo que con esta F1 no era posible: ahí F1·H es de { $reach } K. Una subida así no cuenta
box-no-upper-end = F1·H es de { $reach } K, tan cerca de los { $end } K en que la temperatura final del agua excede la del aire que F2 no tiene extremo superior
box-near-reach = la temperatura final del agua, { $end } K por encima del aire, está cerca de F1·H, { $reach } K: con F1 un 1 % menor, F2 sale un { $more } % mayor
box-reach-remedy = ensaye con un sol más fuerte, o termine la subida a una temperatura más baja
box-one-day = los ensayos en seco o las subidas son de un solo día, así que los márgenes no son márgenes del 95 %
box-one-day-remedy = ensaye otros días

## Concentrating cooker

section-dish = Ensayo de enfriamiento y calentamiento
dish-what = A la sombra, la carga pierde su temperatura por encima del aire con la constante de tiempo τ0; con la capacidad calorífica C del agua y los recipientes, C/τ0 es su pérdida. F′UL es esa pérdida por cada m² de superficie de los recipientes. Al sol, F′η0 es la parte de la luz sobre el área de intercepción que recibe la carga, con la pérdida sumada.
dish-loss = pérdida al aire por enfriamiento, F′UL·At
dish-rests-on-cooling = La pérdida se apoya en { $runs ->
    [one] { $runs } ensayo
   *[other] { $runs } ensayos
} de enfriamiento, de { $from } hasta bajar a { $to }.
dish-rests-on-vessels = Para los recipientes cuenta una capacidad calorífica de { $heat } J/K: { $basis }.
dish-rests-on-heating = El factor óptico se apoya en { $runs ->
    [one] { $runs } calentamiento
   *[other] { $runs } calentamientos
}, desde 5 K por encima del aire hasta 5 K por debajo de la ebullición, hasta donde llegue cada uno.
dish-caption = Agua por encima de la temperatura media del aire desde el inicio de cada ensayo de enfriamiento; trazo grueso: lo que da su constante de tiempo con aire constante.
dish-alt = Gráfico de líneas de la temperatura del agua por encima del aire frente al tiempo, de { $runs ->
    [one] { $runs } ensayo
   *[other] { $runs } ensayos
} de enfriamiento, con la curva exponencial. La constante de tiempo media es de { $minutes } minutos.
dish-axis-time = tiempo desde la primera lectura, min
dish-axis-difference = agua por encima del aire, K
dish-key-water = lecturas
dish-key-told = según la constante de tiempo
dish-source = STILL TO TRANSLATE
dish-no-cooling-run = no hay ningún ensayo de enfriamiento, así que no hay constante de tiempo, ni pérdida, ni factor óptico
dish-no-cooling-run-remedy = deje enfriar una carga caliente a la sombra, y regístrela: kind = "cooling"
dish-begins-too-cool = { $log }: el agua empieza { $above } K por encima del aire, y un ensayo de enfriamiento, al menos { $least } K por encima; no cuenta
dish-begins-too-cool-remedy = empiece cerca de la ebullición
dish-warms = { $log }: el agua llegó a estar { $rise } K más caliente que antes, así que le dio el sol, o se añadió agua caliente; no cuenta
dish-warms-remedy = aparte la cocina del sol o haga sombra a toda la abertura
dish-cooling-too-short = { $log }: antes de un hueco de más de veinte minutos o de un tramo excluido hay muy pocas lecturas, o una bajada de menos de un quinto de la temperatura inicial por encima del aire; no cuenta
dish-cooling-too-short-remedy = lea cada cinco minutos o más a menudo, durante una hora o más
dish-no-loss-area = la superficie de los recipientes no está indicada, así que la pérdida se da solo en W/K
dish-no-loss-area-remedy = indique loss_area_m2 bajo [cooker]: paredes y tapa de los recipientes
dish-no-vessel-heat = lo que almacenan los recipientes no está indicado, y no cuenta: la pérdida y el factor óptico resultan demasiado bajos en esa parte
dish-no-vessel-heat-remedy = pese los recipientes vacíos: vessel_mass_kg y vessel_material bajo [load]
dish-no-heating = ningún ensayo con agua tiene una subida de { $rise } K con irradiancia, sin huecos ni tramos excluidos, así que no hay factor óptico
dish-no-heating-remedy = registre un calentamiento de al menos { $rise } K al sol, con irradiancia
dish-plane-not-normal = la irradiancia no se midió mirando al sol, y el factor óptico es para la radiación directa
dish-plane-estimated = la irradiancia es estimada, y el factor óptico toma la de la radiación directa
dish-plane-remedy = mantenga el sensor mirando al sol, e indique plane = "normal"
dish-global-not-beam = STILL TO TRANSLATE
dish-global-not-beam-remedy = diga en las notas si el sensor veía solo la radiación directa
dish-no-end = dentro de lo que pueden desviarse los instrumentos, el margen de una de las cifras no tiene extremo, y no se da
dish-no-end-remedy = mida la irradiancia con un sensor mejor conocido, e indique su incertidumbre
dish-one-day = el enfriamiento o el calentamiento es de un solo día, así que los márgenes no son márgenes del 95 %
dish-one-day-remedy = ensaye otros días

## Energy and exergy

section-efficiency = Energía y exergía
efficiency-what = Eficiencia energética: el calor que absorbió el agua entre la luz solar sobre el área de intercepción. Eficiencia exergética: lo mismo con la parte que podría hacer trabajo, de modo que el agua caliente cuenta más que la tibia. Exergía máxima: el vértice de la parábola de la exergía frente a la diferencia de temperatura; factor de calidad: ese máximo entre la exergía del calor que allí se pierde.
# { $range } in °C.
efficiency-rests-on = Se apoyan en { counted-intervals } con lecturas fiables, agua de { $range }, { $irradiance } W/m² de media. Los recipientes no cuentan.
efficiency-peak-at = El máximo está { $difference } K por encima del aire, con el sol del ensayo ({ $irradiance } W/m² de media).
efficiency-caption = Exergía que gana el agua, intervalo por intervalo, frente a su temperatura por encima del aire; trazo grueso: la parábola.
efficiency-caption-no-peak = Exergía que gana el agua, intervalo por intervalo, frente a su temperatura por encima del aire. No hay ningún máximo entre los intervalos.
efficiency-alt = Diagrama de dispersión de la exergía en vatios frente a la diferencia de temperatura en kelvin, { counted-intervals }.
efficiency-axis-difference = diferencia de temperatura, Td, K
efficiency-axis-exergy = exergía, W
efficiency-key-intervals = intervalos
efficiency-key-parabola = parábola
efficiency-source = STILL TO TRANSLATE
efficiency-plane = la irradiancia se midió con un sensor tendido en horizontal: donde el área de intercepción mira al sol, la luz solar se cuenta de menos, y las eficiencias salen demasiado altas
efficiency-plane-remedy = compare solo con ensayos cuyo sensor estuviera en horizontal
efficiency-no-peak = la exergía no tiene ningún punto más alto entre los intervalos, así que no hay máximo ni factor de calidad
efficiency-no-peak-remedy = ensaye desde 5 K por encima del aire hasta cerca de la ebullición
efficiency-no-loss = puede que no haya pérdida, así que no hay factor de calidad
efficiency-no-loss-remedy = ensaye en un margen más amplio de temperaturas del agua, y en más días
efficiency-one-day = todo es de un solo día, así que los márgenes no son márgenes del 95 %
efficiency-one-day-remedy = ensaye otros días

## Where no water heats

tested-method-none = ninguno de la práctica: ningún ensayo calienta agua
tested-environment-dry = Entorno de las mesetas
tested-environment-cooling = Entorno de los ensayos de enfriamiento
tested-no-plateau = ninguna meseta

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
check-figures = Otras cifras hasta ahora
check-no-figures = Todavía ninguna otra cifra.
box-grade-one-day = STILL TO TRANSLATE
box-grade-not-flat = STILL TO TRANSLATE
box-glass = El vidrio es de { $area } m², según lo indicado.
box-glass-not-stated = STILL TO TRANSLATE
box-beyond-reach-remedy = F1 es demasiado baja, o el sensor leyó de menos en ese ensayo: compruebe que se llegó a la meseta, que los espejos estaban igual de cubiertos y que el sensor estaba en horizontal
boiling-gets-to = no hay tiempo hasta hervir: con el sol del ensayo el agua llega a { $highest }, y hierve a { $boiling }
boiling-may-not = no hay tiempo hasta hervir: dentro de lo que pueden desviarse las cifras, puede que el agua no llegue a { $boiling }, donde hierve
boiling-remedy = ensaye con un sol más fuerte, o mejore la cocina
dish-runs-left-out = ensayos con agua sin una subida de { $rise } K al sol y sin huecos ni tramos excluidos, que no cuentan: { $runs }
dry-no-ambient = el aire no se leyó a menos de dos horas de los tramos constantes
dry-no-ambient-remedy = lea el aire al menos una de cada dos veces
dry-may-get-hotter = en su meseta el recipiente aún subía { $rate } K/min: según su subida inicial puede acabar { $more } K más caliente
dry-no-end = la diferencia por cada W/m² no se da: dentro de lo que puede errar la irradiancia, su intervalo no tiene fin
efficiency-peak-unsure = hay un máximo, pero deja de haberlo sin uno de los días, o dentro de lo que pueden desviarse los instrumentos: no se da
efficiency-peak-unsure-remedy = ensaye más días, cada uno desde 5 K por encima del aire hasta cerca de la ebullición
efficiency-too-much = el agua absorbió más calor que la luz solar sobre el área de intercepción, lo que no puede ser
efficiency-too-much-remedy = compruebe el área de intercepción, la carga y las unidades
tested-instruments-note-cooling = STILL TO TRANSLATE

## Comparison: figures beside the rating

section-beside = Cifras aparte de la calificación
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
beside-figure = cifra
beside-difference = diferencia
beside-verdict = ¿se distinguen?
# After the difference of two percentages.
beside-points = puntos porcentuales
# In that column, and on a terminal after the difference.
beside-told-apart = se distinguen
beside-not-told-apart = no se distinguen
beside-apart-when-tested = se distinguieron al ensayarse
# { $pairs } is more than one.
beside-by-chance = no se distinguen al ser { $pairs } pares
# { $why }: one of figure-unlike-….
beside-not-compared = no se comparan: { $why }
# { $verdict }: one of those above; { $marks }: one or several of the next three.
# As in English
beside-marked = { $verdict } ({ $marks })
beside-one-day = un día
beside-indicative = indicativa
beside-vessels-not-stated = recipientes no indicados
figure-unlike-vessels = otros recipientes
figure-unlike-plane = irradiancia en otro plano
figure-unlike-plane-not-stated = plano de la irradiancia no indicado
figure-unlike-load-or-sun = otra carga, otro sol u otro aire
figure-unlike-load = otra carga
figure-unlike-span = otro margen de temperaturas del agua
figure-unlike-vessel-heat = el calor de los recipientes cuenta solo en una
figure-unlike-no-budget = su ± no se da fuente por fuente
beside-note = Cada ± es para el 95 %. Lo que ambas campañas tienen en común se anula en la diferencia, de modo que dos cifras cuyos márgenes se solapan aún pueden diferir.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = El recipiente vacío de { $second } se calienta más por cada W/m² que el de { $first }: { $difference } K m²/W más ({ $interval }), un { $share } %: se distinguen.
beside-cooler = El recipiente vacío de { $second } se calienta menos por cada W/m² que el de { $first }: { $difference } K m²/W menos ({ $interval }), un { $share } %: se distinguen.
beside-hotter-one-day = El recipiente vacío de { $second } se calentó más por cada W/m² que el de { $first } al ensayarse: { $difference } K m²/W más ({ $interval }), un { $share } %. No se ensayaron en varios días cada uno, de modo que los días por sí solos pueden explicarlo: ensaye ambos de nuevo en otros días.
beside-cooler-one-day = El recipiente vacío de { $second } se calentó menos por cada W/m² que el de { $first } al ensayarse: { $difference } K m²/W menos ({ $interval }), un { $share } %. No se ensayaron en varios días cada uno, de modo que los días por sí solos pueden explicarlo: ensaye ambos de nuevo en otros días.
beside-hotter-by-chance = Qué recipiente vacío se calienta más por cada W/m², el de { $second } o el de { $first }, no queda demostrado: difieren en { $difference } K m²/W ({ $interval }), un { $share } %, pero entre { $pairs } pares uno puede diferir tanto por azar.
beside-hotter-not-told = No se puede saber qué recipiente vacío se calienta más por cada W/m², el de { $second } o el de { $first }: { $second } tiene { $difference } K m²/W más, un { $share } %, y cualquier valor de { $interval } es compatible con los datos.
beside-cooler-not-told = No se puede saber qué recipiente vacío se calienta más por cada W/m², el de { $second } o el de { $first }: { $second } tiene { $difference } K m²/W menos, un { $share } %, y cualquier valor de { $interval } es compatible con los datos.
beside-hotter-not-compared = No se compara cuánto se calientan los recipientes vacíos de { $second } y { $first }: { $why }.
beside-nothing-shared = { $second } y { $first } no tienen ninguna cifra en común.
beside-others = Otras cifras de { $second } y { $first } que se pueden comparar: { $compared }; de estas, se distinguen: { $apart }.
comparison-dry-note = Meseta: donde el recipiente ya no se calentó más. K m²/W: recipiente por encima del aire, por cada W/m², ± para el 95 %.
comparison-dry-caption = STILL TO TRANSLATE
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = STILL TO TRANSLATE
# As in English
comparison-practice-no-rating = JCGM 100:2008 para las diferencias
beside-note-difference = La incertidumbre de una diferencia de cifras aparte de la calificación contiene la dispersión y los días de ambas campañas, cada una con sus propios grados de libertad, y lo que sus instrumentos no comparten. Lo que un mismo día hace a ambas no se descuenta de ella, lo que la aumenta. La calificación tiene su propia comparación; también la ganancia y la pérdida, donde ambas tienen una calificación y un balance térmico.
beside-note-alike = Las cifras se comparan donde los archivos de campaña dejan pensar que son semejantes: por cada W/m², la irradiancia en un mismo plano; de recipientes vacíos o que se enfrían, el mismo número de recipientes, con el mismo calor y la misma superficie dentro de un 2 %; tiempos hasta hervir, eficiencias y exergía máxima, la irradiancia dentro de un 2 % y el ambiente dentro de 2 K; tiempos hasta hervir, la carga dentro de un 2 % y el punto de ebullición dentro de 2 K; eficiencias, un margen de temperaturas del agua dentro de 5 K en sus extremos y de 2 K de media; F2, la carga por cada m² dentro de un 10 %; constante de tiempo, la carga dentro de un 2 %. Estos límites son práctica habitual, sin fuente publicada. «Recipientes no indicados»: nadie dice que fueran semejantes.
beside-note-pairs = «Se distinguen»: la p de la diferencia es menor que 0,05, corregida por el método de Holm por los pares en que se compara la cifra, de { $pairs } en total; no está corregida por el número de cifras. De una diferencia entre días sueltos nunca se dice que se distinguen.

## Slips that show

dry-sun-down = en la meseta el sol estaba bajo el horizonte: el reloj, la zona horaria o el lugar están mal
dry-sun-down-remedy = corrija time_zone, latitud y longitud en [site], o las horas del registro
dry-colder-than-air = el recipiente marca { $below } K por debajo del aire más fresco del ensayo: uno de los dos está en otra unidad que la indicada
dry-very-hot = STILL TO TRANSLATE
dry-unit-remedy = indique vessel_temperature y ambient_temperature en [units], "°F" o "°C", como muestra cada termómetro
dish-losses-differ = la pérdida por enfriamiento, { $cooling } W/K, y la del balance térmico, { $balance } W/K, difieren en más que sus ±: el sol llegó a la carga que se enfriaba, o el viento era otro
dish-losses-differ-remedy = dé sombra a toda la abertura y a la olla mientras se enfría, y anote el viento en ambos
box-plane-turned = las lecturas del sensor horizontal se convirtieron con estimate = "from-horizontal"; F1 y F2 se definen para ellas tal como eran
box-plane-turned-remedy = haga una segunda campaña con los mismos registros, sin estimate y con plane = "horizontal"
notice-long-run-other = { $log }: las lecturas abarcan { $days } días, un ensayo es una prueba de un día; compruebe las fechas, o indique start y end
finding-no-water = ningún ensayo de esta campaña calienta agua, así que no hay nada que calificar
finding-no-water-remedy = caliente una carga pesada de agua para obtener una calificación; las demás cifras valen por sí mismas
instrument-assumed = no se indica; se toma la de la clase { $class }: { $basis }
