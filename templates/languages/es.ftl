# Español neutro.
#
# { $name } lo pone el programa, igual que { otro-mensaje }; su orden puede cambiar, pero
# todos han de quedar. Lo que pone una plantilla va entre corchetes: [page].

## Numbers, dates, lists

decimal-mark = ,
ends-of-range = { $low } a { $high }
list = { $first } y { $last }
# Between two clauses of a sentence.
# As in English
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
attached-shared = Claves que comparten varias campañas
attached-log = Registro, byte por byte, tal como se leyó
attached-photo = Foto de la cocina, tal como aparece en el informe
attached-rating = Todos los resultados como datos, con toda su precisión
attached-intervals = Una fila por intervalo, usados y descartados
attached-comparison = Comparación como datos, con toda su precisión
attached-pairs = Una fila por par de campañas
attached-plan = Plan del día como datos
checkable = Los datos están dentro de este PDF. Cualquiera puede comprobarlo: «simmerline verify ARCHIVO», versión { $version }, lo compone de nuevo a partir de ellos y dice si es el archivo emitido.
checkable-from = Los datos están dentro de este PDF. Cualquiera puede comprobarlo: «simmerline verify ARCHIVO», versión { $version } (de { $address }), lo compone de nuevo a partir de ellos y dice si es el archivo emitido.
checkable-beside = { $said } Los registros de más de { $limit } MB no están dentro: se guardan junto a él, y la comprobación los necesita.
checkable-not = Este PDF no lleva datos, así que no puede comprobarse por sí solo. Muestra el SHA-256 de cada archivo de entrada.
# On the web page.
page-not-checkable = Esta página web no contiene datos: solo puede comprobarse el PDF de este informe.

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
    [one] { $intervals } intervalo usado
   *[other] { $intervals } intervalos usados
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
report-kind-no-rating = Informe de ensayo de cocina solar: sin resultado
report-kind-estimated = Informe de ensayo de cocina solar: indicativo, irradiancia estimada
# { $title } is the tester's own.
report-title-indicative = { $title } (indicativo)
report-title-not-valid = { $title } (no válido)
report-title-no-rating = { $title } (sin resultado)
report-title-estimated = { $title } (indicativo, irradiancia estimada)
report-invented = Datos inventados, para demostración
report-statement = Los resultados se refieren solo a la cocina tal como se ensayó. Solo se permite la reproducción íntegra.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = irradiancia estimada
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Informe [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = página [page] de [pages]
letterhead-client = para { $client }
letterhead-client-contact = para { $client }, { $contact }
letterhead-number = Informe { $number }
letterhead-issued = emitido el { $date }
sign-tested = Ensayado por
sign-authorised = Autorizado por
sign-date = Fecha y firma
letterhead-hashes = El SHA-256 de los archivos de entrada empieza por { $hashes } (completo: sección { $section }).
letterhead-hashes-more = El SHA-256 de los archivos de entrada empieza por { $hashes } y { $more } más (completo: sección { $section }).

## Page one: how far the rating conforms

level-conforms = Conforme
level-conforms-with-notes = Conforme con notas
level-indicative = Solo indicativo
level-not-valid = No válido
level-no-rating = Sin resultado
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = Según ASAE { $procedure }; límites en la sección { $section }.
headline-conforms-with-notes = Según ASAE { $procedure }; límites en la sección { $section }; las notas figuran abajo.
# Debajo de cualquiera de las dos: en qué se apoyan.
headline-conforms-rests-on = Sin verificar por nadie: los límites, transcritos de memoria de la norma, y la posición de los sensores, que es declaración del operador.
headline-indicative = No cumple ASAE { $procedure }: véanse las deficiencias abajo
headline-indicative-missing = No cumple ASAE { $procedure }; aún faltan: { $missing }
headline-indicative-missing-too = No cumple ASAE { $procedure }: véanse las deficiencias. Además faltan: { $missing }
headline-not-valid = Según estas lecturas, el agua ganaría más calor que la energía solar que incide en la cocina. Compruebe el área de captación, la carga y las unidades.
# { $power }: "55 ± 12 W (not 95 %)".
headline-no-rating-balance = El balance térmico da { $power } a 700 W/m² y 50 K: indicativo, no un resultado de la norma (sección { $section }).
headline-no-rating-missing = Sin resultado según ASAE { $procedure }; aún faltan: { $missing }
headline-without-rating = Sin resultado según ASAE { $procedure }: véanse las deficiencias abajo
headline-counts = { counted-used } (mín. { $least_intervals }) · { counted-days } ({ $least_days }) · R² { $r_squared } ({ $least_r_squared })
headline-counts-no-line = { counted-used } (mín. { $least_intervals }) · { counted-days } ({ $least_days })
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

headline-label = Potencia de cocción normalizada Ps(50)
# Beside the number and its ±; 95 % is the level of confidence.
# As in English
headline-unit = W (95 %)
headline-unit-one-day = W (no 95 %)
headline-what-it-is = Potencia en el ensayo, escalada a 700 W/m² como define ASAE { $procedure }, con el agua { $difference } por encima del aire
page-no-rating = sin resultado
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = irradiancia estimada { $way }
headline-horizontal = irradiancia medida en horizontal, no de cara al sol
headline-plane-not-stated = plano del sensor de irradiancia sin indicar
headline-one-day = ensayada en un solo día: la variación entre días no está en el ±
headline-days-not-in-spread = ningún día se puede omitir del ajuste: la variación entre días no está en el ±
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-extrapolated = una extrapolación: 50 K queda fuera de lo observado
headline-interval = intervalo del 95 %: { $low } a { $high } W
headline-interval-one-day = intervalo sin la variación entre días, no del 95 %: { $low } a { $high } W
fact-delivers = Entrega
fact-took-up = { $power } ± { $half_width } W al agua { $difference } por encima del aire, con los { $irradiance } W/m² del ensayo
fact-took-up-estimated = { $power } ± { $half_width } W al agua { $difference } por encima del aire, con irradiancia estimada en { $irradiance } W/m²
fact-lost = nada de calor: el agua { $difference } por encima del aire perdía { $power } ± { $half_width } W con los { $irradiance } W/m² del ensayo
fact-scaled = con 700 W/m², { $power } ± { $half_width } W según el balance térmico, que escala la ganancia y no la pérdida (sección { $section })
fact-scaled-loses = una pérdida de { $power } ± { $half_width } W con 700 W/m² según el balance térmico (sección { $section })
fact-good = Rendimiento
fact-per-area = { $power } ± { $half_width } W por m² de área de captación, el { $percent } % de 700 W/m². Publicado de otras cocinas, con otros métodos, solo como orden de magnitud: { $range } W/m² (véase «{ summary-title }»).
fact-kitchen = Al cocinar
fact-heats = { $amount } de agua { $journey } en aproximadamente { $time } ({ $range }), con { $irradiance } W/m²
fact-may-not-heat = puede que el agua no pase { $journey } con { $irradiance } W/m²
fact-does-not-heat = el agua no pasa { $journey } con { $irradiance } W/m²
fact-dry = Recipiente vacío
fact-sure = Incertidumbre
fact-parts = Los instrumentos son el { $instruments } % de su cuadrado (sección { $section }).
fact-parts-assumed = Los instrumentos, algunos supuestos, son el { $instruments } % de su cuadrado (sección { $section }).

## Page one: the rating in plain words

# As in English
headline-two-kilograms = 2 kg
headline-heat-ends = el calor útil termina cerca de { $end } ({ $range })
headline-heat-ends-or-boils = el calor útil termina cerca de { $end } ({ $range }, donde hierve el agua)
headline-boils-first = aún calienta al hervir
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = de { $degrees }
journey-degrees = { $start } a { $target }
journey-to-boiling = de { $start } a la ebullición ({ $boiling } aquí)
# { $result } as in stagnation-result.
headline-dry = El recipiente vacío llegó a { $difference } por encima del aire con { $irradiance } W/m²: { $result } (sección { $section }).

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
figure-title-falling = La potencia de cocción normalizada baja al calentarse el agua: { $equation }, R² { $r_squared }
figure-title-falling-estimated = La potencia de cocción normalizada con irradiancia estimada baja al calentarse el agua: { $equation }, R² { $r_squared }
figure-title-rising = La potencia de cocción normalizada no baja al calentarse el agua: { $equation }, R² { $r_squared }
figure-title-rising-estimated = La potencia de cocción normalizada con irradiancia estimada no baja al calentarse el agua: { $equation }, R² { $r_squared }
figure-title-no-line = No se puede ajustar ninguna recta
figure-title-not-valid = Potencia de cocción normalizada según las lecturas; no válida, por lo que no se traza ninguna recta
# In the figure of page one, beside what they name.
# As in English
figure-used = { counted-used }
figure-aside = descartados: { $count }
figure-aside-most = sobre todo: { $reason } ({ $count })
# Where another reason is as frequent.
figure-aside-among = entre ellos: { $reason } ({ $count })
figure-band-dark = oscuro: dispersión y días
figure-band-light = claro: con los instrumentos (95 %)
# Where no other day tells how days differ.
figure-band-dark-one-day = oscuro: dispersión, sin los días
figure-band-light-one-day = claro: con los instrumentos; no es el 95 %
# Read out to those who do not see the figure.
# As in English
power-line-caption = { $facts }.
power-line-alt = Diagrama de dispersión de la potencia de cocción normalizada en vatios frente a la diferencia de temperatura entre agua y ambiente en kelvin. { $facts }; descartados: { $aside }. La recta indica { $power } vatios a 50 kelvin.
power-line-estimated = Irradiancia estimada: { $text }
no-line-facts = { counted-used }, descartados: { $aside }; no se puede ajustar ninguna recta
not-valid-facts = { counted-used }, descartados: { $aside }; no válida, por lo que no se traza ninguna recta
no-line-alt = Diagrama de dispersión de la potencia de cocción normalizada frente a la diferencia de temperatura: { $facts }.
page-findings = Deficiencias y cómo corregirlas
# Below those that page one has room for.
page-findings-next = Todas las deficiencias, y cómo corregirlas, están en la página siguiente.
# Where the rating conforms with notes.
page-findings-notes = Notas, y qué las eliminaría
conditions-title = Condiciones: admitido (sombreado), observado en los intervalos usados (barra y números), intervalos descartados (derecha)
conditions-track = { $name }: { $observed }; descartados: { $count }
brief-irradiance = Irradiancia
brief-irradiance-change = Variación de la irradiancia en un intervalo
brief-wind = Viento medio y viento sostenido
brief-ambient = Temperatura ambiente media
brief-water-above = Agua sobre el ambiente, ambos extremos
brief-water-below = Agua bajo la ebullición, ambos extremos
# { $what }: one of the next or of those above, of irradiance.
brief-estimated = { $what }, estimada
brief-water-lowest = Temperatura más baja del agua
brief-water-highest = Temperatura más alta del agua
brief-solar-time = Hora solar
page-before-you-cook = Antes de cocinar.
headline-caution = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y este resultado no dice nada sobre la seguridad de los alimentos. Lea las advertencias de la sección { $section } antes de cocinar. Las normas locales y la práctica de los profesionales habilitados prevalecen.
headline-caution-no-rating = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y estas cifras no dicen nada sobre la seguridad de los alimentos. Lea las advertencias de la sección { $section } antes de cocinar. Las normas locales y la práctica de los profesionales habilitados prevalecen.
# What others measured, on page two, to hold a rating against.
yardstick-own = Ps(50) por m² de área de captación: { $power } ± { $half_width } W/m², el { $percent } % de 700 W/m².
yardstick-parabolic = Valores publicados, conocidos solo por sus resúmenes: una cocina parabólica, { $value } W/m² (eficiencia energética del 2,8 al 15,7 % aplicada a 700 W/m²; { $source });
yardstick-box = una cocina de caja, { $value } W/m² (27 W con 0,408 m² y 750 W/m² o más; { $source }).
yardstick-caution = Ninguna se ensayó según ASAE S580.1: muestran el orden de magnitud y no sirven para evaluar nada.

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = solo hay { counted-intervals } en uso; la norma exige { $least }
finding-too-few-intervals-own = solo hay { counted-intervals } en uso; el límite propio de la campaña exige { $least }
finding-too-few-intervals-remedy = { missing-intervals } en condiciones de usarse
finding-too-few-days = intervalos usados en { counted-days }; la norma exige { $least }
finding-too-few-days-own = intervalos usados en { counted-days }; el límite propio de la campaña exige { $least }
finding-too-few-days-remedy = ensaye { missing-days }
finding-no-rating = no se puede ajustar ninguna recta: hacen falta tres intervalos usados con irradiancia, a distintas diferencias de temperatura
finding-no-rating-remedy = más intervalos que se puedan usar, desde el ambiente hasta cerca de la ebullición
# { $shortest }, { $longest }: "9", "11".
finding-no-rating-remedy-intervals = lea el agua cada { $shortest } a { $longest } minutos, o cada uno, dos o cinco, hasta cerca de la ebullición
finding-no-rating-remedy-irradiance = mida la irradiancia; sin ella no se puede normalizar la potencia
finding-r-squared-low = R² es { $r_squared }, por debajo de { $least }; la norma solo pide una nota; este informe no declara la conformidad
finding-r-squared-low-own = R² es { $r_squared }, por debajo del límite propio de la campaña de { $least }
finding-r-squared-low-remedy = orientación más constante, cielo más despejado y menos viento; un sensor que no toque la olla
finding-r-squared-low-remedy-resolution = un termómetro del agua más fino: su resolución es la mayor parte de la dispersión
# De una recta a la que sus puntos se ajustan bien.
finding-r-squared-low-remedy-flat = R² es bajo porque la potencia apenas baja con la temperatura, no por la dispersión; juzgue el valor por su ±; un rango más amplio de temperatura del agua eleva R²
finding-line-not-falling = la potencia no disminuye al calentarse el agua, aunque el agua más caliente pierde más calor
finding-line-not-falling-remedy = compruebe que la temperatura medida es la del agua, y abarque un rango más amplio de temperaturas
finding-no-useful-heat = según la recta, la potencia a { $difference } es de { $power } W: ahí el agua pierde calor
finding-no-useful-heat-remedy = compruebe que las lecturas son de agua que se está calentando, con la cocina orientada
finding-extrapolated = { $difference } queda fuera de las diferencias de temperatura observadas, { $observed }
finding-extrapolated-remedy = intervalos usados a ambos lados de { $difference }
# { $runs }: a list of finding-load-off-run.
finding-load-off = la carga se aparta más de un { $tolerance } % de { $load } en { $runs }
# As in English
finding-load-off-run = { $run } ({ $load })
finding-load-off-remedy = pese { $load } de agua por m² de área de captación, o corrija esa área
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = no se midió el viento en { $runs }
finding-wind-not-measured-remedy = mida el viento junto a la cocina, a su altura
finding-wind-estimated = el viento se estimó a ojo en { $runs }, con la exactitud de un grado de la escala de Beaufort
finding-irradiance-estimated = la irradiancia no se midió junto a la cocina en el plano normal a la radiación directa, sino que se estimó { $way }
finding-irradiance-estimated-remedy = mida la irradiancia junto a la cocina, con un sensor orientado hacia el sol
finding-irradiance-missing = no se midió la irradiancia en { $runs }, cuyos intervalos no se pueden normalizar y no están en la recta
finding-irradiance-missing-remedy = mida la irradiancia en el plano normal a la radiación directa
finding-irradiance-horizontal = la irradiancia se midió en el plano horizontal; la norma exige el plano normal a la radiación directa, en el que suele ser mayor, así que el resultado es probablemente demasiado alto
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = monte el sensor orientado al sol, igual que la cocina; hasta entonces, haga convertir sus lecturas al plano orientado al sol, una estimación que el archivo de campaña puede pedir
finding-irradiance-plane-not-stated = el plano del sensor de irradiancia está sin indicar; la norma exige el plano normal a la radiación directa, que es el que se supone
# plane = "normal" y [instruments.irradiance] son partes del archivo de campaña y quedan como están.
finding-irradiance-plane-not-stated-remedy = indique bajo [instruments.irradiance] cómo estaba puesto el sensor: plane = "normal" si estaba orientado al sol, plane = "horizontal" si estaba en horizontal
finding-impossible-gain = { counted-used } con más calor ganado que energía solar captada; el primero absorbió { $power } W de { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-gain-estimated = { counted-used } con más calor ganado que energía solar captada, por más que la incertidumbre de la irradiancia estimada (± { $percent } %); el primero absorbió { $power } W de { $sunlight } W
finding-impossible-gain-remedy = compruebe la masa de agua, el área de captación y las unidades de temperatura e irradiancia
finding-impossible-rating = el resultado de { $power } W es mayor que la energía solar que llega al área de captación con { $irradiance } W/m², { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-rating-estimated = el resultado de { $power } W es mayor que la energía solar que llega al área de captación con { $irradiance } W/m², { $sunlight } W, por más que la incertidumbre de la irradiancia estimada (± { $percent } %)
finding-impossible-rating-remedy = compruebe las unidades de temperatura, el área de captación y la carga de agua
finding-gain-beyond = { counted-used } con más calor ganado que el que explica la irradiancia; el primero absorbió { $power } W de { $sunlight } W
finding-gain-beyond-remedy = compruebe la masa de agua, el área de captación y las unidades, y mida la irradiancia con un sensor orientado al sol
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = límites propios más laxos que un requisito: { $limits }
finding-recommendation-relaxed = límites propios más laxos que una recomendación: { $limits }
finding-limit-tightened = límites propios más estrictos que la norma: { $limits }
finding-guard = una banda de guarda de la incertidumbre expandida en cada límite (norma: ninguna)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (norma: { $practice })
# As in English
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = vuelva a los límites de la norma: borre estos bajo [limits] en el archivo de campaña
finding-excluded-by-tester = el operador excluyó { counted-intervals }
finding-excluded-by-tester-remedy = ninguna acción si el motivo anotado es válido

## What was tested

section-tested = Qué se ensayó
page-instruments = Instrumentos
page-instruments-quantity = magnitud
page-instruments-instrument = instrumento
page-instruments-uncertainty = incertidumbre

## Conditions

section-conditions = Condiciones
# Headers of the table.
page-conditions-condition = condición
page-conditions-limit = límite
page-conditions-short-name = nombre corto
page-conditions-standing = carácter
page-conditions-observed = observado
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
limit-wind-gust = viento sostenido más de diez minutos (descarta la serie)
limit-solar-time-start = hora solar al inicio
limit-solar-time-end = hora solar al final
limit-solar-time = hora solar
limit-interval = duración de un intervalo
limit-load = agua por m² de área de captación
limit-load-tolerance = desviación admitida de la carga
limit-intervals = intervalos usados
limit-days = días con intervalos usados
limit-r-squared = R² de la recta
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = requisito
standing-recommendation = recomendación
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = propio (requisito)
standing-own-recommendation = propio (recomendación)
# As in English
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = sin recta
# Of gusts.
conditions-never = nunca
conditions-gust = durante { $time } como máximo
# Intervals were formed, and none of them is used.
conditions-none-used = ninguno usado
conditions-no-interval = ningún intervalo
conditions-not-measured = no medido
conditions-observed = Observado: del mínimo al máximo, en todos los intervalos. Un intervalo que incumple varias condiciones se cuenta en cada una. Nombres cortos: los de las figuras y la tabla de intervalos.
conditions-r-squared = R² por debajo de su límite: la norma solo pide una nota; este informe no declara la conformidad.
# "Own" as in standing-own-requirement.
conditions-own = Los límites marcados como «propio» son de la campaña y difieren de los de la norma.
conditions-guard = Rige una banda de guarda: un valor solo cuenta como dentro de un límite si lo está con toda su incertidumbre, según la regla de decisión del final.

## Runs

section-runs = Series
# Of more runs than are all shown.
runs-shown = Hay { $runs } series, más de { $most }: se muestran { $shown }, una de cada { $step }, la última y las de los intervalos influyentes que se nombran. Las demás figuran abajo por su nombre; la recta se basa en todas, y todos sus intervalos están en { $file }. «runs_shown = "all"» en [report] muestra todas las series.
page-runs-others = Series sin figura
runs-axes = Todas las series tienen los mismos ejes.
runs-axes-but-clock = Todas las series tienen los mismos ejes, salvo el de la hora.
runs-axes-own-start = Todas las series tienen los mismos ejes; el de la hora empieza con cada serie y abarca lo mismo en todas.
runs-shaded = Sombreado: intervalos usados. Línea de puntos: límites.
runs-wind = Viento: lecturas en línea fina, medias de los intervalos en gruesa.
runs-no-wind = No se midió el viento.
runs-no-irradiance = No se midió la irradiancia.
runs-lanes = Abajo: intervalos no usados, por motivo, con su número.
runs-aimed = Triángulos: reorientada, según las notas del registro.
runs-predicted = r.m.s.: temperatura del agua predicha menos medida, media cuadrática.
run-title = Serie { $number }, { $date }
run-used = { $used } de { $of } usados
run-load = { $water } de agua, { $load }
run-aimed = orientada cada { $minutes } min
# As in English
run-predicted = r.m.s. { $rms } K
run-tester = Operador: { $note }
run-hole = Ningún intervalo de { $from } a { $to }: allí no hay dos lecturas del agua separadas de { $shortest } a { $longest } minutos.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Paneles frente a la hora local del reloj, de { $from } a { $to }: agua entre { $coldest } y { $hottest } grados Celsius con la temperatura ambiente; { $irradiance }; { $wind }. Usados y sombreados: { $used } de { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Descartados: { $reasons }.
run-alt-none-aside = No se descarta nada.
# As in English
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = La temperatura del agua predicha y la medida difieren en { $rms } kelvin, media cuadrática.
run-alt-not-predicted = La recta no predice nada para esta serie.
run-alt-aimed = Reorientada { $times } veces según las notas del registro.
run-alt-aimed-once = Reorientada una vez según las notas del registro.
run-alt-irradiance = irradiancia entre { $lowest } y { $highest } vatios por metro cuadrado
run-alt-no-irradiance = irradiancia no medida
run-alt-wind = viento entre { $lowest } y { $highest } metros por segundo
run-alt-no-wind = viento no medido

## Intervals

section-intervals = Intervalos
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = hora local
# As in English
page-intervals-solar = solar
page-intervals-water = agua, °C
# As in English
page-intervals-ambient = amb., °C
page-intervals-irradiance = irrad., W/m²
page-intervals-range = mín.–máx.
page-intervals-wind = viento, m/s
# As in English
page-intervals-power = P, W
# As in English
page-intervals-difference = Td, K
# As in English
page-intervals-standardised = Ps, W
interval-no-irradiance = no normalizado: sin irradiancia
page-intervals-continued = continuación
intervals-shown = Intervalos de las { $shown } series que se muestran; los { $intervals } están todos en { $file }.
intervals-note = Agua: al inicio y al final del intervalo. Irradiancia: media, y después de la lectura mínima a la máxima. P: potencia de cocción. Td: media del agua menos media del ambiente. Ps: P normalizada a 700 W/m².
intervals-dots = Un punto: el intervalo no se usa, por ese motivo.
intervals-us = 1 K, como diferencia de temperatura, son { $fahrenheit } °F.
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = el agua aún estaba demasiado cerca del ambiente
reason-water-above-window = el agua estaba demasiado cerca de la ebullición
reason-ambient-out-of-range = el aire estaba demasiado frío o demasiado caliente
reason-irradiance-low = la irradiancia era demasiado baja
reason-irradiance-high = la irradiancia era demasiado alta
reason-irradiance-unsteady = la irradiancia era inestable
reason-wind-high = había demasiado viento
reason-outside-solar-window = era demasiado temprano o demasiado tarde en hora solar
reason-reading-gap = faltaban lecturas
reason-excluded-by-tester = el operador excluyó el tramo
reason-not-cloudless = el operador no declara que el cielo estuviera sin nubes
lane-water-below-window = fría
lane-water-above-window = caliente
lane-ambient-out-of-range = aire
lane-irradiance-low = débil
lane-irradiance-high = fuerte
lane-irradiance-unsteady = inestable
lane-wind-high = viento
lane-outside-solar-window = hora
lane-reading-gap = hueco
lane-excluded-by-tester = excluido
lane-not-cloudless = cielo
lane-not-normalised = sin irrad.

## Regression and uncertainty

section-regression = Regresión e incertidumbre
regression-none = No se puede ajustar ninguna recta: para ello hacen falta al menos tres intervalos usados con irradiancia, con distintas diferencias de temperatura.
regression-method = Mínimos cuadrados ordinarios de Ps sobre Td con los intervalos usados de todas las series, todos con el mismo peso. P = m·c·(T2 − T1)/Δt con c = 4186 J/(kg K) y el tiempo real; Ps = P·700/G con la irradiancia media G del intervalo; Td = media del agua menos media del ambiente. Las medias se ponderan por el tiempo.
# Labels, and what stands beside them.
regression-line = recta
regression-intercept = ordenada en el origen a
regression-watts = { $value } W, error estándar { $error } W
regression-slope = pendiente b
regression-watts-per-kelvin = { $value } W/K, error estándar { $error } W/K
regression-residual = residuos
regression-residual-text = desviación estándar { $deviation } W
regression-points = puntos
regression-points-text = { counted-intervals } en { counted-days }, { counted-freedom }
residuals-caption = Residuos de los intervalos usados, por día: frente a la diferencia de temperatura, frente a la hora y frente a los cuantiles de una distribución normal. Línea discontinua: el doble de su desviación estándar; a la derecha, la propia distribución normal.
# Read out to those who do not see the figure.
residuals-alt = Residuos en torno a la recta en vatios, frente a la diferencia de temperatura en kelvin y frente a la hora local del reloj, con una marca para cada día; desviación estándar { $deviation } vatios; { $outside ->
    [one] { $outside } de { $points } puntos queda a más del doble de eso de la recta.
   *[other] { $outside } de { $points } puntos quedan a más del doble de eso de la recta.
}
page-scatter = Efectos de los días, autocorrelación, puntos influyentes
page-uncertainty = Incertidumbre de Ps(50)
# Headers of a table of six columns.
page-uncertainty-source = fuente
page-uncertainty-of-source = base
# Type A or B of the GUM.
page-uncertainty-type = tipo
page-uncertainty-sensitivity = sensibilidad
# As in English
page-uncertainty-of-rating = u, W
# As in English
page-uncertainty-factor = k
page-uncertainty-part = parte de ±²
section-heat-balance = Balance térmico
page-balance-quantity = magnitud
balance-what = El agua absorbe lo que la cocina gana del sol menos lo que pierde al aire: P = g·G − u·Td, con la irradiancia G y la diferencia de temperatura Td. Así se puede calcular la potencia con cualquier irradiancia. El resultado normalizado escala las pérdidas con la irradiancia; este balance no.
# Above a column of values, where days are not in the ±, so that it is no 95 % range.
balance-spread = ± del 95 %: dispersión, días, instrumentos
balance-spread-one-day = ± sin días, no del 95 %: dispersión, instrumentos
balance-gain = ganancia del sol, g
# As in English
balance-gain-text = { $value } m²
balance-loss = pérdida al aire, u
# As in English
balance-loss-text = { $value } W/K
balance-power = potencia a 700 W/m² y 50 K, 700·g − 50·u
# As in English
balance-power-text = { $value } W
balance-ratio = cociente optotérmico, g/u
# As in English
balance-ratio-text = { $value } K m²/W
balance-ratio-none = sin valor: la pérdida puede ser nula
acceptance = semiángulo de aceptación
acceptance-text = { $value }° (de { $lower }° a { $upper }°, 95 %)
acceptance-none = no demostrado
acceptance-rests-on = El semiángulo de aceptación es cuánto puede apartarse el sol del eje antes de que se pierda una décima parte de la ganancia. Se estima a partir de la caída de la potencia entre las orientaciones anotadas en el registro: { $stretches } tramos, con el sol hasta { $angle }° fuera del eje. Su intervalo incluye la dispersión, las formas posibles de la caída y la precisión de las horas anotadas (práctica habitual).
acceptance-few = Sin semiángulo de aceptación: sirven { $teeth } tramos entre orientaciones anotadas y hacen falta { $least }, cada uno con al menos { $readings } lecturas del agua y { $angle }° de movimiento del sol.
acceptance-few-remedy = Anote cada orientación en el registro, lea el agua cada cinco minutos o más a menudo y deje que el sol se mueva unos grados antes de volver a orientar.
acceptance-not-shown = No se demuestra ningún semiángulo de aceptación: en { $teeth } tramos entre orientaciones, con el sol hasta { $angle }° fuera del eje, la ganancia no cae más de lo que explica la dispersión.
acceptance-not-shown-remedy = Deje la cocina sin mover durante una hora, dos veces o más, con el agua a temperatura estable y cielo despejado: en ese tiempo el sol se mueve unos 15°. Quédese a su lado: el foco se aparta de la olla y puede quemar o deslumbrar a quien alcance, e incendiar lo que alcance.
# As in English
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = Se basa en { counted-intervals } en { counted-days } con lecturas fiables, con { $mean } W/m² de media ({ $range } W/m²). Aquí no rigen los límites de tiempo atmosférico y hora; sí los de la temperatura del agua, las exclusiones del operador y, donde la irradiancia es estimada, el cielo sin nubes.
balance-rests-on-steps = Se basa en { $steps } pasos entre lecturas del agua, en { counted-days }, con { $mean } W/m² de media ({ $range } W/m²). Aquí no rigen los límites de tiempo atmosférico y hora; sí los de la temperatura del agua, las exclusiones del operador y, donde la irradiancia es estimada, el cielo sin nubes.
balance-counts-vessels = Aquí la ganancia, la pérdida y la potencia incluyen la capacidad calorífica de los recipientes, { $heat } J/K: { $basis }. El resultado y la sección sobre la cocción se refieren solo al agua.
balance-scaling-adds = Con esta pérdida, escalar el resultado en proporción de { $mean } W/m² a 700 W/m² suma { $power } W a Ps(50).
balance-scaling-takes = Con esta pérdida, escalar el resultado en proporción de { $mean } W/m² a 700 W/m² resta { $power } W a Ps(50).
balance-caption = La banda es la del balance de incertidumbre; donde Monte Carlo llega más lejos, la tabla da el extremo más amplio.
balance-caption-one-day = La banda no incluye la variación entre días, por lo que no es del 95 %; es la del balance de incertidumbre y, donde Monte Carlo llega más lejos, la tabla da el extremo más amplio.
# Behind a caption.
balance-beyond = Intervalos fuera de los bordes: { $count }.
# Read out to those who do not see the figure.
balance-alt = Diagrama de dispersión de la potencia entre la irradiancia, en metros cuadrados, frente a la diferencia de temperatura entre la irradiancia, de { $lowest } a { $highest } kelvin metro cuadrado por vatio. Puntos: { counted-intervals } a los que se ajusta la recta; cruces: otros { $others }. La recta empieza en { $gain } metros cuadrados, sin diferencia de temperatura; la pérdida es de { $loss } vatios por kelvin.
# Axes and key of the figure: there is little room.
balance-axis-difference = diferencia de temperatura entre irradiancia, Td/G, K m²/W
balance-axis-power = potencia entre irradiancia, P/G, m²
balance-key-used = en el ajuste ({ $count })
balance-key-others = otros ({ $count })
balance-key-line = g − u·Td/G, banda del 95 % con instrumentos
balance-key-line-one-day = g − u·Td/G, banda sin días, con instrumentos
balance-none-irradiance = No se pueden ajustar ganancia y pérdida: no se midió la irradiancia.
balance-none-few = No se pueden ajustar ganancia y pérdida: hacen falta al menos tres intervalos con lecturas fiables; hallados: { $intervals }.
balance-none-alike = No se pueden separar ganancia y pérdida: la diferencia de temperatura y la irradiancia guardaron casi la misma proporción en todos los intervalos.
balance-source = Mínimos cuadrados ordinarios de P sobre G y Td sin término independiente, todos los intervalos con el mismo peso. Según Funk y Larson 1998 (Solar Energy 62, 63–68); no es un ensayo según ISO 9806. Cociente optotérmico: Lahkar, Bhamu y Samdarshi 2012 (Applied Energy 99, 491–495).

## Cooking

section-cooking = Qué significa para cocinar
page-cooking-water = agua
# [journey] is put in by the program: "from 20 °C to 95 °C", the message journey.
page-cooking-time = tiempo [journey]
page-cooking-range = rango
page-cooking-boiling = hasta hervir
page-foods-food = alimento
page-foods-specific-heat = calor específico
page-foods-cooked = se cuece a
page-foods-amount = cantidad
page-foods-range = rango
page-year = Días despejados a lo largo del año
page-fuel = Combustible sustituido
page-dry = Recipiente vacío
page-dry-date = fecha
page-dry-plateau = estancam.
page-dry-air = aire
page-dry-irradiance = irradiancia
page-dry-difference = diferencia por W/m²
page-dry-notes = notas
# As in English
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimada
# As in English
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = Temperatura estable más alta del recipiente vacío y oscuro por encima del ambiente, dividida entre la irradiancia; ± del 95 %, con un termómetro de horno dentro de ± 10 K donde no se indica la incertidumbre. Relaciona las pérdidas de calor con la energía solar y no es una potencia de cocción. Mullick, Kandpal y Saxena 1987 usan este cociente para cocinas de caja; en otras cocinas solo sirve para comparar las que son semejantes. Un recipiente vacío puede ponerse al rojo, rajarse o perder el recubrimiento: nunca lo deje sin vigilancia.
page-assumed = Supuestos

## Cautions

section-cautions = Advertencias

## Provenance

section-provenance = Desviaciones, notas y procedencia
page-deviations = Desviaciones
page-tester-notes = Notas del operador
page-notices = Avisos de la lectura de los registros
page-logs = Cómo se leyeron los registros
page-made-with = Hecho con
page-sources = Lo que no se comprobó
# SHA-256: digits that change when a file changes.
page-inputs = Archivos, con su SHA-256
# A photo among the inputs.
input-photo = { $file }, tal como está en este informe
# { $file }: its name, or input-photo.
input-outside = { $file }, de fuera de la carpeta de la campaña
# Un registro demasiado largo para ir dentro; { $file }: su nombre, o input-outside.
input-beside = { $file }, no dentro de este informe sino junto a él ({ $bytes } bytes)
inputs-beside = { $count ->
    [one] { $count } registro de más de { $limit } MB no está dentro de este PDF. Guárdelo con el PDF, en la misma carpeta y con su nombre: «simmerline verify» lo necesita, y solo lo acepta si su SHA-256 es el que figura aquí. «--logs DIR» indica otra carpeta. «report --carry-all» pone dentro un registro así.
   *[other] { $count } registros de más de { $limit } MB no están dentro de este PDF. Guárdelos con el PDF, en la misma carpeta y con sus nombres: «simmerline verify» los necesita, y solo acepta cada uno si su SHA-256 es el que figura aquí. «--logs DIR» indica otra carpeta. «report --carry-all» pone dentro registros así.
}

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = sin indicar

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Cocina de caja
cooker-panel = Cocina de panel
cooker-concentrating = Cocina de concentrador
cooker-tube = Cocina de tubo
aperture-circle = círculo, { $diameter } de diámetro
aperture-rectangle = rectángulo, { $width } por { $height }
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = polígono regular, { $sides } lados, { $across } entre vértices
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
basis-within-kelvin = dentro de ± { $limit }
basis-within-kelvin-read = dentro de ± { $limit }, con lectura a { $step }
basis-within-seconds = dentro de ± { $limit } s

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
# As in English
subtitle-cooker = { $cooker }, { $area }
# As in English
subtitle-site = { $site }, { $elevation }
subtitle-tester = operador: { $tester }
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
tested-area = área de captación
# As in English
tested-aperture = apertura
tested-description = descripción
tested-condition = estado
tested-received = recibida el
tested-mass = masa
tested-cost = costo
# { $currency }: as the tester wrote it.
# As in English
tested-cost-text = { $cost } { $currency }
tested-cost-no-currency = { $cost } (moneda sin indicar)
tested-load = Carga
tested-water = agua
tested-per-area = por área de captación
tested-per-area-text = { $load } (norma: { $practice })
tested-per-area-own = { $load } (límite propio: { $own })
tested-vessels = recipientes
tested-environment = Entorno de los intervalos usados
environment-ambient = ambiente
environment-irradiance = irradiancia
environment-wind = viento
environment-numbers = media { $mean }, lecturas { $range }
environment-none = ningún intervalo usado
tested-site = Lugar
tested-place = lugar del ensayo
tested-position = posición
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
        [one] { $runs } serie
       *[other] { $runs } series
    }
tested-tracking = seguimiento
# { $minutes }: a number, or a list of numbers.
tested-tracking-text = reorientada cada { $minutes } min
tested-issued = informe emitido
tested-parties = Laboratorio y cliente
tested-laboratory = laboratorio
tested-laboratory-not-stated = nombre y dirección sin indicar
tested-tester = operador
tested-authorised = autorizado por
tested-client = cliente
tested-contact = contacto del cliente
tested-client-data = datos del cliente
tested-sampling = muestreo
tested-not-sampled = sin indicar; tal como se recibió, sin muestreo
tested-others = resultados externos
tested-others-station = irradiancia, del registro de una estación cercana
tested-stated-note = Los datos de la cocina, la carga, el lugar, el laboratorio y el cliente son los indicados por el operador y no se verificaron; sus errores, y los de las incertidumbres indicadas, pasan a los resultados. Los resultados se refieren a la cocina tal como se recibió.

## What was tested: instruments

tested-water-temperature = temperatura del agua
tested-ambient-temperature = temperatura ambiente
tested-wind-speed = velocidad del viento
tested-water-mass = masa de agua
tested-irradiance-estimated = irradiancia, estimada
tested-irradiance-normal = irradiancia, normal a la radiación directa
tested-irradiance-horizontal = irradiancia, plano horizontal
tested-irradiance-plane-assumed = irradiancia, plano sin indicar, tomado como normal a la radiación directa
instrument-not-measured = no medido
# Beside an uncertainty that may be stated or not.
instrument-not-described = sin describir
# { $description }: the tester's own words; { $id }: a mark or number.
# As in English
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
# As in English
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
# As in English
instrument-estimated-uncertainty = { $uncertainty }; { $budget }
instrument-uncertainty-of-model = la del modelo; { $budget }
# { $budget }: where it stands.
budget-in-section = sección { $section }
budget-in-own-report = el balance de incertidumbre está en su propio informe
instrument-by-class = por su clase, { $basis }
instrument-by-eye = a ojo, escala de Beaufort (WMO-No. 8)
instrument-by-eye-uncertainty = el rango de un grado, por ejemplo de { $speeds }
uncertainty-percent = { $percent } % de la lectura
# As in English
# As in English
# As in English
uncertainty-seconds = { $seconds } s
tested-instruments-note = Incertidumbres estándar (k = 1) indicadas por el operador; «por su clase»: límites de la clase; la sección { $section } dice qué se supone donde no se indica ninguna de las dos. La norma pide el sensor del agua en el centro, 10 mm por encima del fondo del recipiente, el viento medido junto a la cocina y a su altura, y una carga igual en todos los recipientes; nada de esto se comprobó.

## Regression and uncertainty: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = combinada
budget-root = raíz de la suma de cuadrados
# The rating with its expanded uncertainty.
# As in English
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (no 95 %)
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
        [one] { $days } día, omitido
       *[other] cada uno de { $days } días, omitido por turno
    }
budget-per-percent = W por %
budget-per-kelvin = W por K
# As in English
budget-percent = { $share } %
budget-tiny = otras, cada una menor que el { $share } %
budget-offset-of = { $known } (parte constante)
budget-scale = { $percent } % de la distancia a { $about } (parte de escala)
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
error-conversion = irradiancia, convertida al plano normal
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
known-conversion = conversión { $percent } %, con la radiación directa conocida dentro de un quinto
known-distance = { $percent } % por una estación cercana
known-specific-heat = 4186 J/(kg K) dentro de ± { $percent } %
known-clock-rate = marcha del reloj dentro de ± { $percent } %
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = práctica habitual
source-wmo-8 = WMO-No. 8, totales horarios, para las clases de ISO 9060:1990 (patrón secundario, primera, segunda) a las que siguen las A, B, C de 2018
source-iec-60584 = IEC 60584-1:2013, tolerancia hasta 100 °C
source-iec-60751 = IEC 60751, tolerancia a 100 °C
source-clear-sky = Ineichen y Perez 2002; Reno, Hansen y Stein 2012 (SAND2012-2389); turbidez por práctica habitual
source-conversion = Erbs, Klein y Duffie 1982; Gueymard y Ruiz-Arias 2016
source-specific-heat = IAPWS-IF97, 10 °C a 95 °C

## Regression and uncertainty: what the budget comes to

# As in English
budget-result = Ps(50) = { $rating }
budget-result-not-valid = No válido (página uno): el balance siguiente es el de las lecturas, que se contradicen.
budget-rule = Intervalo: la raíz de la suma de los (k·u)². Donde una comprobación por Monte Carlo (JCGM 101:2008) difiere en más que su tolerancia, cada extremo es el más alejado de los dos, y el ± es el lado mayor. JCGM 100:2008, G.4, toma un solo k para todas las filas; con pocos días eso dio intervalos demasiado estrechos en simulaciones.
budget-note-columns = k: t de Student para dispersión y días, 1,96 para los instrumentos. Parte: (k·u)² de la fila entre la suma de todas las filas; negativa donde un error compensa una parte de otro. Tipo A: por la estadística de los intervalos; B: por otros medios.
budget-note-common = Los errores de los instrumentos son comunes a todos los intervalos. Los de irradiancia, masa, calor específico y tiempo escalan toda la recta y nunca se ven en su dispersión; un error constante de temperatura se anula en la subida y solo desplaza Td; un error de escala hace ambas cosas.
budget-note-thermometer = Se supone que la incertidumbre u de un termómetro vale a { $cold } y a { $hot } de forma independiente (práctica habitual): un error constante de u/√2, y un error de escala respecto a { $about } que es de u/√2 en ambos extremos. El agua y el aire leídos con un mismo instrumento comparten los dos errores.
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = Lo que el operador no indicó procede de: { $sources }. Los límites de los que no se sabe más se toman como distribución rectangular, u = límite/√3 (JCGM 100:2008, 4.3.7).
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = Para { $quantities }, el archivo de campaña no indica ni incertidumbre ni clase, así que se supone la clase más desfavorable. Indicar lo que se usó reducirá muy probablemente la incertidumbre.
budget-note-resolution = De la dispersión de { $scatter } W por intervalo, la resolución del termómetro explica { $step } W y el momento de la lectura { $moment } W, en suma cuadrática; ambas forman parte de ella.
budget-note-resolution-most = De la dispersión de { $scatter } W por intervalo, la resolución del termómetro explica { $step } W y el momento de la lectura { $moment } W, en suma cuadrática; ambas forman parte de ella. Los intervalos vecinos comparten una lectura, así que la mayor parte se anula a lo largo de una serie; el resto es la mayor parte de lo que la dispersión y los días aportan al resultado, y un termómetro más fino lo reduciría.
budget-note-resolution-beyond = La resolución del termómetro daría por sí sola una dispersión de { $step } W por intervalo, y el momento de la lectura { $moment } W: juntas, más que los { $scatter } W observados. Así que el termómetro se leyó en pasos más finos que los indicados o supuestos, o sus errores de redondeo se anularon por casualidad. Indicar el paso en que se leyó (resolution_k) puede reducir la incertidumbre.

## Regression and uncertainty: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = Sin comprobación por Monte Carlo: la irradiancia es tan incierta que en algunas simulaciones cae a cero o por debajo. El intervalo es entonces poco más que una conjetura.
drawn-holds = Monte Carlo, { $trials } simulaciones de los mismos errores a través de lecturas, potencia, regresión y recta: el 95 % de ellas de { $lower } a { $upper } W, dentro de la tolerancia de { $tolerance } W. El intervalo es el del balance.
drawn-apart = Monte Carlo, { $trials } simulaciones de los mismos errores a través de lecturas, potencia, regresión y recta: el 95 % de ellas de { $lower } a { $upper } W. Difiere hasta en { $apart } W del intervalo del balance, { $from } a { $to } W, más que la tolerancia de { $tolerance } W.
drawn-because-divided = Causa principal: la potencia se divide entre una irradiancia cuya incertidumbre estándar es del { $percent } %, así que un error hacia un lado mueve el resultado más que el mismo error hacia el otro.
drawn-because-curved = Causa principal: errores distintos del de la irradiancia no actúan de forma proporcional.
drawn-because-limits = Causa principal: los errores de los que solo se conocen los límites no tienen colas, y el balance supone que las tienen.
drawn-because-few = Causa principal: con { $freedom ->
    [one] { $freedom } grado
   *[other] { $freedom } grados
} de libertad, la t de Student y una distribución normal no se combinan exactamente como una raíz de cuadrados.
drawn-because-unsettled = Causa principal: las propias simulaciones; con { $freedom ->
    [one] { $freedom } grado
   *[other] { $freedom } grados
} de libertad, sus extremos se estabilizan despacio.
drawn-interval = El intervalo es por tanto { $from } a { $to } W.
drawn-settled-to = Los extremos del intervalo de Monte Carlo se conocen con ± { $within } W.

## Regression and uncertainty: what more data would bring

outlook-at-best = Con más ensayos con estos instrumentos, el ± no puede bajar de { $least } W.
outlook-reached = Se alcanza el objetivo de ± { $target } W.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = El objetivo de ± { $target } W requiere { $more }, con la dispersión observada hasta ahora.
outlook-more-one-day = El objetivo de ± { $target } W requiere { $more }, con la dispersión observada hasta ahora y si los días no difieren.
outlook-intervals = { $intervals ->
        [one] { $intervals } intervalo usado más
       *[other] { $intervals } intervalos usados más
    }
outlook-intervals-and-days = { $intervals ->
        [one] { $intervals } intervalo usado más
       *[other] { $intervals } intervalos usados más
    } en { $days ->
        [one] { $days } día más
       *[other] { $days } días más
    }
# { $heaviest }: one of the sentences that follow.
outlook-out-of-reach = El objetivo de ± { $target } W no se puede alcanzar con más intervalos: los instrumentos por sí solos dejan ± { $least } W. { $heaviest }
heaviest-irradiance = Lo que más pesa es la irradiancia.
heaviest-clear-sky = Lo que más pesa es la irradiancia estimada.
heaviest-conversion = Lo que más pesa es la irradiancia, convertida al plano normal.
heaviest-distance = Lo que más pesa es la irradiancia en la estación.
heaviest-water-temperature = Lo que más pesa es la temperatura del agua.
heaviest-water-scale = Lo que más pesa es la escala del termómetro del agua.
heaviest-ambient-temperature = Lo que más pesa es la temperatura ambiente.
heaviest-ambient-scale = Lo que más pesa es la escala del termómetro del ambiente.
heaviest-water-mass = Lo que más pesa es la masa de agua.
heaviest-specific-heat = Lo que más pesa es el calor específico del agua.
heaviest-clock-rate = Lo que más pesa es el tiempo.
outlook-too-far = El objetivo de ± { $target } W requeriría más intervalos de los que se miden en la práctica, con la dispersión observada hasta ahora.
outlook-too-far-one-day = El objetivo de ± { $target } W requeriría más intervalos de los que se miden en la práctica, con la dispersión observada hasta ahora y si los días no difieren.

## Page one, and regression and uncertainty: what limits the number most

limits-most-few-days = La mayor parte del ± se debe a que solo hay { $days ->
    [one] { $days } día
   *[other] { $days } días
} (el { $percent } % de su cuadrado).
limits-most-days = La mayor parte del ± es la dispersión entre días (el { $percent } % de su cuadrado).
limits-most-within-days = La mayor parte del ± es la dispersión dentro de los días y entre ellos (el { $percent } % de su cuadrado).
limits-resolution = La mayor parte de la dispersión entre intervalos se debe a la resolución del termómetro del agua.
limits-most-scatter = La mayor parte del ± es la dispersión de los intervalos (el { $percent } % de su cuadrado).
limits-most-resolution = La mayor parte del ± es la dispersión (el { $percent } % de su cuadrado), debida sobre todo a la resolución del termómetro del agua.
limits-most-irradiance = La mayor parte del ± es la incertidumbre de la irradiancia (el { $percent } % de su cuadrado).
limits-most-estimated = La mayor parte del ± es la estimación de la irradiancia (el { $percent } % de su cuadrado).
limits-most-water = La mayor parte del ± es la incertidumbre del termómetro del agua (el { $percent } % de su cuadrado).
limits-most-ambient = La mayor parte del ± es la incertidumbre del termómetro del ambiente (el { $percent } % de su cuadrado).
limits-most-mass = La mayor parte del ± es la incertidumbre de la masa de agua (el { $percent } % de su cuadrado).
limits-most-other = La mayor parte del ± son el calor específico del agua y el reloj (el { $percent } % de su cuadrado).

## Regression and uncertainty: days, neighbours and single intervals

days-one = Todos los intervalos usados son de un solo día: no se sabe cuánto difieren los días, y eso no está en la incertidumbre. Otro día bien puede dar un valor fuera del intervalo indicado.
days-too-few-intervals = Hay muy pocos intervalos para distinguir los días de la dispersión; cuánto difieren los días no está en la incertidumbre.
days-no-scatter = Los intervalos están sobre las rectas de sus días sin dispersión alguna, así que no se pueden comparar los días.
# As in English
days-test = F({ $between }, { $within }) = { $statistic }, { $p }
# { $numbers }: days-numbers. One of days-left-out and days-left-out-two follows
# after the first three.
days-differ = Los días difieren más de lo que explica la dispersión dentro de cada día ({ $numbers }).
days-not-shown = Los días no difieren más de lo que explica la dispersión dentro de cada día ({ $numbers }).
days-count = Como observaciones independientes cuentan los { $days } días, no los { $intervals } intervalos: cada día se omite por turno, lo que cubre diferencias de nivel y de pendiente y deja { $freedom ->
    [one] { $freedom } grado
   *[other] { $freedom } grados
} de libertad.
days-count-two = Como observaciones independientes cuentan los { $days } días, no los { $intervals } intervalos: cada día se omite por turno, con { $freedom ->
    [one] { $freedom } grado
   *[other] { $freedom } grados
} de libertad. Dos días dicen poco de cuánto difieren los días, así que el intervalo es amplio.
days-agree = Omitir por turno cada uno de los { $days } días da un intervalo más estrecho que la dispersión de los intervalos, así que se usa esa dispersión.
days-cannot-be-left-out = No se puede omitir ningún día, porque los demás no dan una recta: la incertidumbre se basa en los intervalos, y no incluye la variación entre días.
neighbours-drift = Durbin–Watson dentro de las series d = { $statistic } (2: independientes), bilateral { $p }: los intervalos vecinos se desvían hacia el mismo lado (autocorrelación positiva), como cuando cambia poco a poco la orientación o el cielo.
neighbours-share = Durbin–Watson dentro de las series d = { $statistic } (2: independientes), bilateral { $p }: los intervalos vecinos comparten una lectura del agua, así que sus errores alternan.
neighbours-by-turns = Durbin–Watson dentro de las series d = { $statistic } (2: independientes), bilateral { $p }: los errores de los intervalos vecinos alternan, más de lo que explica la lectura del agua que comparten, como cuando se reorienta la cocina cada dos intervalos.
neighbours-not-shown = Durbin–Watson dentro de las series d = { $statistic } (2: independientes), bilateral { $p }: no se demuestra autocorrelación.
influential = Intervalos influyentes (distancia de Cook > 4/n), ninguno eliminado: { $intervals }.
influential-more = Intervalos influyentes (distancia de Cook > 4/n), ninguno eliminado: { $intervals }; y { $more } más.
influential-one = { $date } { $time } ({ $distance }; sin él { $power } W)

## Provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = Límite propio: { $what } { $limit }.
# guard = true está escrito en el archivo de campaña y queda como está.
deviation-guard = Regla de decisión propia: la incertidumbre cuenta en contra en cada límite, lo que la norma no pide.
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run }: de { $from } a { $to }, tramo excluido por el operador: { $reason }.
deviation-excluded-no-reason = { $run }: de { $from } a { $to }, tramo excluido por el operador: sin motivo indicado.
deviation-findings = Véanse también las deficiencias o notas al comienzo de este informe.
deviation-interval = Duración del intervalo: se aceptan de { $shortest } a { $longest } s, con la potencia calculada sobre el tiempo real; la norma pide { $practice } s.
# Labels stand at the left; there is room for 20 letters.
made-with = programa
made-issued = emitido
made-practice = norma
made-solar-time = hora solar
made-solar-time-text = NREL/TP-560-34302, a partir de la hora y la longitud
made-boiling = punto de ebullición
made-boiling-text = atmósfera ISO 2533 donde no se midió la presión, saturación IAPWS-IF97
made-decision = regla de decisión
made-decision-text = cada valor observado se compara con su límite, sin margen por su incertidumbre; el que iguala el límite lo cumple: aceptación simple, JCGM 106:2012
made-decision-guarded = cada valor observado se compara con su límite junto con su incertidumbre expandida (k = { $factor }), y lo cumple donde todo ese intervalo queda dentro: irradiancia ± { $irradiance } %, agua ± { $water }, aire ± { $ambient }, una hora del reloj ± { $clock } s, masa de agua ± { $mass } %, { $wind }; área de captación, recuentos y R² sin ella: aceptación con guarda, JCGM 106:2012, 8.3 e ILAC-G8
made-decision-wind = viento ± { $wind }
made-decision-no-wind = viento sin ella, porque su incertidumbre está sin indicar
made-irradiance = irradiancia
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimada { $way }; plano normal a la radiación directa según Liu y Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimada { $way }, turbidez de Linke { $turbidity } según lo indicado; plano normal a la radiación directa según Liu y Jordan 1963
made-irradiance-usual = estimada { $way }, turbidez de Linke { $turbidity } (práctica habitual); plano normal a la radiación directa según Liu y Jordan 1963
unchecked-memory = Citado de memoria, sin el texto a mano: { $works }. Los cálculos se prueban con ejemplos publicados y recálculos independientes; estos valores no. Compruebe aquellos de los que dependa una decisión.
unchecked-common = «Práctica habitual» significa que no se conoce ninguna fuente publicada.
memory-s580 = ASAE S580.1 (sus límites, parafraseados, y las posiciones que pide para los sensores)
memory-decision = JCGM 106:2012 (regla de decisión)
memory-decision-guarded = JCGM 106:2012 e ILAC-G8 (regla de decisión)
memory-iec-60751 = IEC 60751 (tolerancia de los termómetros de resistencia)
memory-clear-sky = Reno, Hansen y Stein 2012 (el 5 % de un modelo de cielo despejado)
memory-conversion = Gueymard y Ruiz-Arias 2016 (la dispersión de la radiación directa)
memory-balance = Funk y Larson 1998 (el balance térmico; se consultó su resumen); Lahkar, Bhamu y Samdarshi 2012 (el cociente optotérmico)
memory-dry = Mullick, Kandpal y Saxena 1987 (el recipiente vacío)
memory-box = Mullick, Kandpal y Saxena 1987 e IS 13429 (figuras de mérito)
memory-dish = Mullick, Kandpal y Kumar 1991 (parámetros de un disco parabólico)
memory-efficiency = Kumar, Vishwanath y Gupta 2012 (la exergía máxima; se consultó su resumen)
memory-food = Chen 1985 y el ASHRAE Handbook, Refrigeration (calores específicos de los alimentos)
memory-groups = Piepho 2004 (grupos por letras)
memory-cautions = ISO 13732-1:2006 (quemaduras); Ciochetti y Metcalf 1984 (pasteurización)
report-end = Fin del informe { $number }
# { $minutes }: "20".
balance-readings-far-apart = las lecturas distan en su mayoría { $minutes } minutos, y ningún intervalo de la norma cabe entre ellas: la ganancia y la pérdida se apoyan en los pasos de una lectura a la siguiente, y son indicativas
balance-readings-far-apart-remedy = lea el agua cada 9 a 11 minutos
balance-one-day = todos los datos son de un solo día, o ningún día se puede omitir del ajuste, así que los intervalos de la ganancia y de la pérdida no son del 95 %
balance-one-day-remedy = ensaye otros días
balance-irradiance-hardly-varied = la irradiancia apenas varió ({ $range } W/m²): la ganancia y la pérdida se separan solo por la temperatura del agua, y los valores con otra irradiancia dependen del modelo
balance-irradiance-hardly-varied-remedy = ensaye con menor y con mayor irradiancia
balance-loss-not-shown = la pérdida es de { $loss } W/K y puede ser nula ({ $range } W/K)
balance-loss-not-shown-remedy = ensaye en un rango más amplio de temperaturas del agua, y en más días
cooking-opinion = Los tiempos, las cantidades y los meses de esta sección, y todo tiempo de calentamiento al comienzo de este informe, son una interpretación: se deducen del ensayo y de los supuestos de abajo, y no se midieron.

## What it means for cooking

cooking-no-line = No se ajustó ninguna recta, así que no hay tiempos de calentamiento.
cooking-not-valid = Omitido: las cifras contradicen la física, así que de ellas no se deduce nada sobre tiempos de calentamiento, alimentos ni meses.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, la ensayada
# As in English
cooking-no = no
cooking-no-ends = no; deja de calentar cerca de { $temperature }
cooking-probably-not = probablemente no
cooking-probably-not-ends = probablemente no; deja de calentar cerca de { $temperature }
cooking-time-range = { $shortest } a { $longest }
cooking-time-open = { $shortest } o más, quizá nunca
# As in English
cooking-boil = { $time } ({ $range })
cooking-foods-title = Alimentos llevados a la temperatura de cocción y mantenidos a ella en menos de { $time }
cooking-foods-all = En { $time }, la ventana solar, cada uno de estos alimentos llega a su temperatura de cocción y se mantiene a ella, en la cantidad de la carga ensayada, { $load }, o más: { $foods }.
# As in English
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = Desde { $start } con { $irradiance } W/m², dentro de la ventana solar; como máximo la carga ensayada, { $load }, más allá de la cual el ensayo no dice nada. Calores específicos: Chen 1985, con contenidos de agua del ASHRAE Handbook, Refrigeration. Temperaturas y tiempos de cocción: práctica habitual; { $safe }: USDA FSIS. Estimación: compruebe con un termómetro dentro del alimento.
cooking-amount-or-more = { $amount } o más
cooking-cooked-at = { $temperature } durante { $time }
cooking-amount-range = { $lowest } a { $highest }
cooking-amount-up-to = de nada a { $highest }
cooking-amount-none = nada
cooking-amount-probably-none = probablemente nada
cooking-heat-ends = Con { $irradiance } W/m² la cocina deja de calentar a una temperatura del agua de { $end } ({ $range }), donde la potencia llega a cero; aquí el agua hierve a { $boiling }.
cooking-heat-ends-or-boils = Puede que no lleve el agua a la ebullición, aquí { $boiling }: con { $irradiance } W/m² deja de calentar, según la recta, cerca de { $end }, valor incierto (de { $lowest } a la ebullición).
cooking-ends-perhaps = Aquí el agua hierve a { $boiling }, probablemente cuando la cocina aún calienta; según el rango de la recta, puede dejar de calentar desde { $lowest }.
cooking-ends-above = Aquí el agua hierve a { $boiling }; la cocina aún calienta al hervir.
cooking-never-ends = La potencia no baja al calentarse el agua, así que no se deduce dónde deja de calentar; aquí el agua hierve a { $boiling }.
cooking-light-of-test = Irradiancia constante de { $irradiance } W/m² en el plano del sensor, la media de los intervalos usados, con la que la recta no se escala; viento como en los intervalos usados, cocina reorientada como en el ensayo.
cooking-light-asked = Irradiancia constante de { $irradiance } W/m² en el plano del sensor, como pide la campaña, con la potencia según el balance térmico; viento como en los intervalos usados, cocina reorientada como en el ensayo.
cooking-air-mean = Ambiente a { $ambient }, la media de los intervalos usados.
cooking-air-asked = Ambiente a { $ambient }, como pide la campaña.
cooking-assumed-load = Toda carga absorbe la potencia de la carga ensayada; cargas mucho menores o mayores absorben menos o más. El calor que almacena la olla no se cuenta. Más allá de las temperaturas de los intervalos usados, la recta se prolonga.
cooking-assumed-edges = Los rangos siguen la banda del 95 % de la potencia, con los instrumentos, y valen para la media de muchos calentamientos, no para uno solo.
cooking-assumed-edges-one-day = Los rangos siguen la banda de la potencia, con los instrumentos; no incluye la variación entre días y no es del 95 %, así que otro día los tiempos pueden quedar fuera.
cooking-no-months = Sin estimación mensual: la irradiancia se midió en el plano horizontal, y el modelo de cielo despejado es para el plano orientado al sol.
cooking-assumed-water = El agua no es un alimento: los alimentos se calientan más despacio, y levantar la tapa cuesta muchos minutos.
food-potatoes = papas (patatas), en trozos
food-carrots = zanahorias, en trozos
food-cabbage = col (repollo), picada
food-rice = arroz con el doble de su masa de agua
food-eggs = huevos, enteros
food-fish = pescado (bacalao)

## Clear days through the year

year-note-balance = Estimado para el día 15 de cada mes con cielo despejado (Ineichen y Perez 2002), contando las horas con { $irradiance } W/m² o más en el plano normal a la radiación directa; las nubes y la bruma lo reducen. Calor: según el balance térmico, entregado a agua { $difference } por encima del aire; la media de los meses es de { $mean } kWh al día. Ambiente a { $ambient } todo el año, cocina orientada todo el día.
year-note-water = Agua: cargas de { $load }, una tras otra, cada una de { $start } a { $end } y mantenida { $time } (Ciochetti y Metcalf 1984); { $kilogram } se toma como { $litre }. Empieza a { $start }, así que los litros no se deducen del calor que figura al lado. La OMS constata que los virus mueren solo despacio entre 60 °C y 65 °C: siempre que pueda, lleve el agua a ebullición a borbotones, y lea la advertencia sobre el agua para beber. Solo para agua clara; el calor no elimina sustancias químicas.
year-caption = Barras: estimación; trazos: su rango debido solo a la incertidumbre del balance térmico. Horas contadas: de { $fewest } a { $most }.
# As in English
year-hours-of = { $hours } ({ $month })
year-axis-heat = calor al día, MJ
year-axis-water = agua pasteurizada al día, { $unit }
year-alt = Dos gráficos de barras por meses del año. { $months }.
year-alt-month = { $month }: { $heat } MJ ({ $heats }) al día, { $water } L ({ $waters })
fuel-name = combustible
fuel-heat = calor en un día despejado
fuel-heat-text = { $heat } MJ, la media de los meses de arriba
fuel-value = poder calorífico inferior
fuel-stove = rendimiento del fogón
fuel-days = días al año
fuel-result = Con estos supuestos, todos ellos del operador, el mismo calor requeriría una cantidad estimada de { $best } de { $fuel } al año ({ $range } debidos solo a la incertidumbre del resultado). Se ahorra solo en la medida en que de verdad no se enciende el fuego; no se promete nada.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Las normas locales, y la práctica de quienes están habilitados para trabajar conforme a ellas, van antes que cualquier cosa de este informe. El informe evalúa el calor; no dice nada sobre la seguridad de la cocina ni de los alimentos.
caution-governs = Mientras una persona de habla española no haya revisado esta traducción, prevalece el texto en inglés.
caution-burns-title = Quemaduras y escaldaduras
caution-burns-text = La olla, su tapa, la cubierta transparente, la rejilla y el vapor están lo bastante calientes para quemar al menor contacto, mucho antes de que hierva el agua: el metal desnudo quema a unos 65 °C en menos de un segundo y a unos 51 °C en menos de un minuto. Use guantes secos, abra la tapa hacia el lado opuesto a usted, y haga sombra a la cocina y deje reposar la olla antes de transportarla. El vidrio caliente se raja al tocarlo el agua fría, y un tubo estrecho puede expulsar el agua hirviendo.
caution-light-title = Luz concentrada y deslumbramiento
caution-light-text = Nunca mire hacia el foco, ni al sol ni a su imagen en un reflector o panel: ningunas gafas de sol lo hacen seguro, y cerca del foco las gafas oscuras no bastan. Mantenga la cabeza y las manos fuera del haz. Aparte el reflector del sol, o hágale sombra, antes de acercar la mano a la olla. Tenga en cuenta que puede deslumbrar a vecinos, conductores y transeúntes.
caution-fire-title = Incendio
caution-fire-text = Un reflector conserva su foco mientras el sol se mueve, y así puede prender fuego a hierba seca, tela, madera o una pared hacia la que no apuntaba hace una hora. Instálelo sobre suelo desnudo, lejos de todo lo que arda, tenga a mano agua o arena, y cubra el reflector o póngalo boca abajo cuando no se use, también bajo techo y en el almacén. Nunca eche agua sobre grasa en llamas: tápela.
caution-unattended-title = Nunca sin vigilancia
caution-unattended-text = Alguien que conoce los peligros permanece junto a la cocina, la orienta y vigila la olla. Una olla que ha hervido hasta quedarse seca se sobrecalienta, se raja o se incendia; un frasco cerrado herméticamente o una tapa sujeta con abrazaderas pueden reventar.
caution-children-title = Niños y animales
caution-children-text = Mantenga a los niños y a los animales fuera de una línea marcada alrededor de la cocina. Ellos no ven el foco, y este puede estar a la altura de sus ojos.
caution-wind-title = Viento
caution-wind-text = Un reflector es como la vela de un barco. Sujételo con peso o átelo, y guárdelo antes de que llegue un viento fuerte: cuando vuelca, derrama agua hirviendo y lanza su foco hacia otro lugar.
caution-materials-title = Sol, calor y materiales
caution-materials-text = El operador está al sol durante horas: sombrero, sombra, agua y descansos. No use pintura, lámina, adhesivo ni metal galvanizado que se caliente cerca de los alimentos o que desprenda vapores; caliente una cocina nueva una vez sin alimentos, al aire libre.
caution-food-title = Seguridad de los alimentos
caution-food-text = Las bacterias se multiplican deprisa entre 5 °C y 60 °C. Los alimentos no deben permanecer a esas temperaturas más de dos horas en total, ni más de una hora donde el aire está por encima de 32 °C; una cocina que calienta despacio, o una nube, puede hacer que superen ese tiempo, y recalentar no deshace lo que ya se haya formado. Mida dentro del alimento: al menos 74 °C en todas sus partes. Mantenga los alimentos calientes a 60 °C o más. En caso de duda, tírelos.
caution-water-title = Agua para beber
caution-water-text = El calor mata los gérmenes; hervir no elimina sustancias químicas, sal ni suciedad. Lleve toda el agua a ebullición a borbotones y manténgala hirviendo un minuto, por encima de { $elevation } tres. Con menos calor se tarda más y es menos seguro: 65 °C mantenidos durante seis minutos es lo que se llama pasteurizar, y los virus mueren solo despacio entre 60 °C y 65 °C. Deje enfriar el agua tapada, en el recipiente en que se calentó.
caution-sources = Fuentes. Quemaduras: ISO 13732-1:2006. Alimentos: USDA FSIS, zona de peligro 40 a 140 °F, regla de las dos horas y temperaturas mínimas seguras, de las que 74 °C, la de las aves y las sobras, es la más alta; OMS, Cinco claves para la inocuidad de los alimentos, 5 °C a 60 °C. Agua: aviso de hervir el agua de la US EPA (1 min, 3 min por encima de 5000 ft), según se cita en Emerging Infectious Diseases 31(8), 2025; WHO/FWC/WSH/15.02; Ciochetti y Metcalf 1984, Appl. Environ. Microbiol. 47. Todo lo demás: práctica habitual.

## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log }: las filas no estaban en orden cronológico y se han ordenado
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
    } de la columna «{ $column }» fuera de los puntos de su calibración, extrapoladas con la recta más cercana
notice-quantity-in-both = { $quantity } está en { $log } y en { $weather }; vale lo medido junto a la cocina
notice-weather-in-part = { $weather } cubre solo una parte de { $log }; compruebe los relojes de ambos (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log }: dividido en { $runs ->
        [one] { $runs } serie
       *[other] { $runs } series
    } por fecha y hueco, cada una desde el inicio de la serie hasta su final; se omiten { $parts } y { $readings }
notice-log-split-rising = { $log }: dividido en { $runs ->
        [one] { $runs } serie
       *[other] { $runs } series
    } por fecha y hueco, cada una desde el agua más fría hasta la más caliente, donde sube { $rise } K o más; se omiten { $parts } y { $readings }
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
notice-sensors-apart = { $log }: los sensores de { $quantity } difieren en más de { $apart } en { $readings ->
        [one] { $readings } momento
       *[other] { $readings } momentos
    }; se usa su media: compruebe que ninguno haya fallado
notice-sensors-incomplete = { $log }: en { $readings ->
        [one] { $readings } momento
       *[other] { $readings } momentos
    } a uno de los sensores de { $quantity } le falta la lectura; la media de los demás da ahí un salto si difieren
notice-long-run = { $log }: las lecturas abarcan { $days } días, y una serie es un calentamiento en un día; compruebe las fechas, fije start y end, o split = "daily"
notice-above-boiling = { $log }: el agua alcanza { $highest }, por encima de su punto de ebullición de { $boiling } aquí; compruebe el sensor, la altitud o la presión
notice-odd-noon = { $log }: el mediodía solar cae a las { $noon } del reloj; compruebe la longitud (positiva hacia el este) y la zona horaria
notice-column-not-found = { $log }: ninguna columna se reconoce como { $quantity }, magnitud que cuenta como no medida; sin leer: { $ignored }; si una de ellas la contiene, nómbrela bajo [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = leído de fuera de la carpeta de la campaña, como permitió quien generó este informe (--allow-outside): { $files }
notice-trimmed = { $log }: { $readings ->
        [one] { $readings } lectura omitida
       *[other] { $readings } lecturas omitidas
    } antes del inicio de la serie o después de su final
notice-no-intervals = { $log }: no hay dos lecturas del agua separadas de { $shortest } a { $longest } minutos, así que no hay intervalo; registre con pasos que sumen { $minutes } minutos
notice-idle-exclusion = { $log }: el tramo excluido de { $from } a { $to } no afecta a ningún intervalo; compruebe sus horas
notice-stall = { $log }: el agua gana menos de la mitad de lo que dice la recta { $spans }, como bajo una nube, aunque se declara que el cielo estaba sin nubes; revise sus notas y la orientación
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
notice-above-film = a temperatura ambiente, según la recta se absorbe el { $share } % de la energía solar captada, más de lo que devuelve una lámina reflectante (86 %; práctica habitual, sin fuente publicada); compruebe el área de captación, la masa de agua y la irradiancia
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = incertidumbre sin indicar, por lo que se toma el instrumento más desfavorable: { $taken }; indique la clase o la incertidumbre bajo [instruments]
notice-instrument-taken = { $quantity } con { $class }
notice-date-differs = { $log }: la fecha indicada de la serie es { $stated }, pero sus lecturas comienzan el { $found }; valen las lecturas
# Slips. { $zone } is a time zone, { $away } and { $near } are kilometres, { $longitude } and { $latitude } degrees.
notice-odd-noon-sign = { $log }: el mediodía solar cae a las { $noon } del reloj; con { $longitude } como longitud caería a las { $meant }: compruebe el signo de longitude_deg (positiva hacia el este), o si no la zona horaria
notice-odd-noon-exchanged = { $log }: el mediodía solar cae a las { $noon } del reloj; con la latitud y la longitud intercambiadas caería a las { $meant }: compruebe si latitude_deg y longitude_deg están una en lugar de la otra, o si no la zona horaria
notice-far-from-zone-sign = el lugar está a { $away } km del lugar principal de su zona horaria { $zone }; con { $longitude } como longitud estaría a menos de { $near } km: compruebe el signo de longitude_deg (positiva hacia el este), o si no la zona horaria
notice-far-from-zone-exchanged = el lugar está a { $away } km del lugar principal de su zona horaria { $zone }; con latitud { $latitude } y longitud { $longitude } estaría a menos de { $near } km: compruebe si latitude_deg y longitude_deg están una en lugar de la otra, o si no la zona horaria
notice-sun-down = { $log }: { $irradiance } W/m² a las { $time } del { $date }, cuando el sol está aquí bajo el horizonte; compruebe el reloj del registrador y su zona (time_zone bajo [format]), la fecha y las coordenadas del lugar
notice-sun-low = { $log }: { $irradiance } W/m² a las { $time } del { $date }, cuando el sol está aquí a { $elevation }° de altura y un cielo sin nubes da como mucho unos { $most } W/m²; compruebe el reloj del registrador y su zona (time_zone bajo [format]), las coordenadas del lugar y la unidad de la irradiancia
notice-heats-at-night = { $log }: el agua se calienta de { $from } a { $to } del { $date }, mientras el sol está aquí bajo el horizonte; compruebe el reloj del registrador y su zona (time_zone bajo [format]), mañana y tarde, y las coordenadas del lugar
# { $first } to { $last } are the dates of the other runs.
notice-odd-year = { $log }: sus lecturas son del { $found }, las de las demás series del { $first } al { $last }; si el año es un error y se trata del { $meant }, corríjalo en el registro o ponga en hora el registrador
notice-odd-month = { $log }: sus lecturas son del { $found }, las de las demás series del { $first } al { $last }, y está puesta entre ellas; si el mes es un error y se trata del { $meant }, corríjalo en el registro o ponga en hora el registrador
notice-odd-day-and-month = { $log }: sus lecturas son del { $found }, las de las demás series del { $first } al { $last }; si el día y el mes están intercambiados y se trata del { $meant }, indíquelo con date_order bajo [format], o corrija la fecha en el registro
notice-date-of-name = { $log }: su nombre dice { $named }, sus lecturas son del { $found }; corrija lo que sea un error
notice-clock-not-set = { $log }: sus lecturas son del { $found }, desde cuando cuentan los relojes que nunca se pusieron en hora; escriba el día del ensayo en el registro, y ponga en hora el registrador
notice-in-future = { $log }: sus lecturas son del { $found }, y hoy es { $issued }; { $runs ->
        [one] compruebe la fecha en el registro y el reloj de este equipo
       *[other] en total { $runs } series están por venir; compruebe las fechas en los registros y el reloj de este equipo
    }
notice-odd-run = { $log }: sus intervalos toman el { $share } % de la potencia que dice la recta de las otras { $others } series; si es de otra cocina, o su carga o sus columnas son otras, haga con ella otra campaña o corríjalas; si no, diga en sus notas qué fue distinto
# { $quantity } is a quantity-…; { $time } is a duration.
notice-stuck-sensor = { $log }: { $quantity } vale { $value } { $unit } en cada una de las { $readings } lecturas durante { $time }, mientras otras magnitudes cambian; compruebe que el sensor estaba conectado y que esa es su columna; deje en blanco las celdas donde no se midió nada
# { $first }, { $highest }: numbers as they stand in the log, without a unit.
notice-celsius-as-fahrenheit = { $log }: esto parece °C: el agua en la columna «{ $column }» empieza en { $first }, cerca del aire a { $air }, y llega como máximo a { $highest }; en °F empezaría a { $first_c }; si está en °C, escriba (°C) tras el encabezado, o corrija la unidad del agua bajo [units]
notice-celsius-as-fahrenheit-no-air = { $log }: esto parece °C: el agua en la columna «{ $column }» empieza en { $first } y llega como máximo a { $highest }; en °F empezaría a { $first_c }; si está en °C, escriba (°C) tras el encabezado, o corrija la unidad del agua bajo [units]
notice-water-air-exchanged = { $log }: el aire sube { $air } y el agua { $water }; si las columnas están intercambiadas, nombre cada una con water_temperature y ambient_temperature bajo [columns]
# { $runs } is a list of runs; { $water }, { $area } and loads have their units.
notice-load-pounds = { $runs }: { $water } de agua sobre { $area } son { $load }; si el número fueran libras, serían { $meant }, y se esperan { $expected }: si lo son, conviértalas (1 lb son 0,4536 kg)
notice-load-square-feet = { $runs }: { $water } de agua sobre { $area } son { $load }; si el área estuviera en pies cuadrados, o sus longitudes en pies, serían { $meant }, y se esperan { $expected }: si es así, conviértala (1 ft² son 0,0929 m², 1 ft son 0,3048 m)
notice-load-kilograms = { $runs }: { $water } de agua sobre { $area } son { $load }; si se convirtieron kilogramos como si fueran libras, serían { $meant }, y se esperan { $expected }: si es así, escriba los kilogramos que se pesaron
notice-load-square-metres = { $runs }: { $water } de agua sobre { $area } son { $load }; si se convirtieron metros cuadrados como si fueran pies cuadrados, serían { $meant }, y se esperan { $expected }: si es así, escriba los metros cuadrados que se midieron

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
skip-remark = comentario
skip-blank = en blanco
skip-header-again = encabezado repetido
skip-before-header-again = antes de un encabezado repetido
skip-footer = después de la última lectura
skip-cut-off = cortada al final del archivo
skipped-more = { $lines } y { $more } más
skipped-lines = { $count ->
        [one] línea { $lines } omitida ({ $reason })
       *[other] líneas { $lines } omitidas ({ $reason })
    }
# Labels and texts of a list of facts about a log.
log-form = formato
log-form-text = { $written_in }; encabezado en la línea { $line }; signo decimal: { $mark }
log-time-text = hora: { $format }, como en «{ $example }»; zona { $zone }
log-clock = reloj
log-clock-text = { $seconds } s sumados a todas las horas
log-notes = notas: se leen las que dicen que la cocina se volvió a orientar al sol
log-not-read = sin leer
log-readings = { $readings ->
        [one] { $readings } lectura de { $from } a { $to }
       *[other] { $readings } lecturas de { $from } a { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } lectura de { $from } a { $to }, por lo general una cada { $step } s
       *[other] { $readings } lecturas de { $from } a { $to }, por lo general una cada { $step } s
    }
# The same once for several logs: a label, and what stands beside it.
log-step = lecturas
log-step-text = por lo general una cada { $step } s
# How a column was understood: water temperature (synonym), °C (header).
# As in English
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
# As in English
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }); { $corrections }
# As in English
log-column-one-source = { $quantity }, { $unit } ({ $found_by })
# As in English
log-column-one-source-corrected = { $quantity }, { $unit } ({ $found_by }); { $corrections }
found-campaign-file = archivo de campaña
found-header = encabezado
found-synonym = sinónimo
found-elimination = nada más en un registro meteorológico
unit-header = encabezado
unit-units-row = fila de unidades
unit-campaign-file = archivo de campaña
unit-cells = celdas
unit-assumed = sin indicar, supuesta
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
time-stopwatch = tiempo transcurrido desde el inicio de la serie
time-since-1970 = { $unit } desde 1970
time-serial = días de hoja de cálculo desde 1899-12-30
time-elapsed = { $unit } transcurridos desde el inicio de la serie
zone-epoch = UTC (desde 1970)
zone-start = la del inicio de la serie
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
# Of dates such as 10.06.2026, and of those such as 10/06/26.
order-points = los puntos separan día, mes y año
order-only-usual = el único orden usual en que cada fila es un día
order-first-row = la primera fila
order-same-day = el mismo día en cualquier orden
order-only-following = el único orden en que un día sigue a otro
order-run-date = la fecha de la serie
order-year-month-day = año-mes-día
order-day-month-year = día-mes-año
order-month-day-year = mes-día-año

# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = diferencia de temperatura Td, agua menos ambiente, { $unit }
# Upright, up to 45 letters.
figure-power = potencia de cocción normalizada Ps, W
figure-power-estimated = Ps, W, con irradiancia estimada
# As in English
figure-power-short = Ps, W
figure-power-short-estimated = Ps estimada, W
# In an empty figure.
figure-no-interval = ningún intervalo completo, así que no hay nada que representar
figure-nothing-to-plot = irradiancia no medida, así que no hay nada que representar
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W a { $at }

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = diferencia de temperatura Td, { $unit }
figure-start = hora local al inicio
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = cuantil normal estándar
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps menos recta, W
figure-band = recta con su banda, W
# A day in a key.
figure-day = { $day } de { $month }

## Figures: a run over the day

# Beside a curve.
figure-water = agua
figure-ambient = ambiente
figure-aimed = reorientada
figure-boils = hierve a { $at }
figure-below-boiling = ebullición − { $margin }
figure-above-ambient = ambiente + { $margin }
figure-estimated = estimada

# The comparison of several campaigns, in the order of its pages.
#
# { $first } and { $second } are campaigns by their titles, as the testers wrote them, such as
# "Box one, lid open"; where two have one title, with the folder's name in brackets behind it.
# Where there are many, campaigns are called by numbers (calls-numbers). The difference is that of
# the second from the first.

## Comparison: every page

comparison-kind = Comparación de cocinas solares
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = { $cookers ->
        [one] { $campaigns } campañas de una cocina
       *[other] { $campaigns } campañas de { $cookers } cocinas
    }
# { $sites }: a list of names of places, or comparison-sites. { $dates }: a date, or
# comparison-dates.
comparison-sites = { $count } lugares
# In place of a long list of those who tested.
comparison-authors = { $count } operadores
comparison-statement = Los resultados se refieren solo a las cocinas tal como se ensayaron. Solo se permite la reproducción íntegra.
# At the head of every page.
comparison-mark-mixed = Procedimientos o límites distintos
comparison-mark-not-valid = No válido en parte
comparison-mark-indicative = Indicativo en parte
comparison-mark-invented = Datos inventados, para demostración
comparison-end = Fin del informe { $number }

## The web page that leads to the reports of several campaigns

# { $count }: how many reports it leads to.
index-title = { $count ->
    [one] Un informe de ensayo de cocina solar
   *[other] { $count } informes de ensayo de cocinas solares
}
index-subtitle = Redactado el { $date }
# { $name }: a campaign.
index-invented = { $name } (datos inventados)
index-some-invented = Algunos de los datos son inventados, para demostración
index-statement = Cada resultado se refiere solo a la cocina tal como se ensayó.
index-no-rating = Ninguna de estas campañas tiene resultado.
# "compare" is a command.
index-order = El orden es el de los números y no dice qué cocina es mejor: las campañas pueden diferir en lugar, tiempo atmosférico, carga e instrumentos. La orden «simmerline compare» muestra si la diferencia entre dos de ellas es real.
page-index-reports = Informes y datos
index-web-page = informe
index-pdf = informe en PDF
index-results = resultados como datos
index-intervals = tabla de intervalos
# { $names }: campaigns, with ";" between them.
index-failed = { $count ->
    [one] De una campaña no se escribió informe
   *[other] De { $count } campañas no se escribió informe
}: { $names }. El motivo se mostró en el terminal.
index-caution = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y estos resultados no dicen nada sobre la seguridad de los alimentos. Lea las advertencias del informe antes de cocinar. Las normas locales y la práctica de los profesionales habilitados prevalecen.

## Comparison: what campaigns are called

# A campaign's title within a sentence.
calls-name = «{ $name }»
# Some campaigns by the numbers that they have in the comparison: "2", or "1–4, 7".
calls-numbers = { $count ->
        [one] n.º { $numbers }
       *[other] n.os { $numbers }
    }

## Comparison: its title
#
# { $name }, { $first }, { $second }: titles of campaigns. { $power }: verdict-power, or
# verdict-power-indicative. "Gives" is of standardised cooking power at 50 K.

# As in English
verdict-power = { $power } ± { $half_width } W
verdict-power-indicative = { $power } (solo indicativo)
verdict-title-only = Un solo resultado válido: { $name }, { $power }
verdict-title-two = { $first } da { $difference } más que { $second }
verdict-title-two-alike = { $first } y { $second } no se distinguen
verdict-title-two-untold = No se puede saber cuál da más, { $first } o { $second }
verdict-title-most = { $name } es la que más da: { $power }
# Some cannot be held against it; or none can.
verdict-title-most-told = { $name } es la que más da de las que se pueden comparar: { $power }
verdict-title-alone = { $name } tiene el resultado más alto, { $power }, pero no se puede comparar con las demás
verdict-title-leads-one = { $name } va primera con { $power }, pero no se distingue de { $second }
# { $others }: at least two.
verdict-title-leads = { $name } va primera con { $power }, pero otras { $others } no se distinguen de ella
# { $second } gives more by the heat balances, which decide where irradiance differed.
verdict-title-beaten-by-one = { $name } tiene el resultado más alto, { $power }, pero con igual irradiancia { $second } da más
verdict-title-beaten = { $name } tiene el resultado más alto, { $power }, pero con igual irradiancia otras { $others } dan más
# Counts of those held against the baseline { $name }.
verdict-title-baseline = Frente a { $name } ({ $power }), dan más: { $more }; dan menos: { $less }; no se distinguen: { $alike }
verdict-baseline-unrated = { $name }, la referencia, no tiene un resultado válido, así que no se compara ningún resultado.
# Beside a large number, which is { $minuend } less { $subtrahend }.
verdict-lead = { $minuend } menos { $subtrahend }, Ps(50), con su intervalo del 95 %
verdict-lead-one-day = { $minuend } menos { $subtrahend }, Ps(50), con su intervalo; no se ensayaron en varios días cada una, así que no es del 95 %
verdict-lead-common = { $minuend } menos { $subtrahend }, potencia a 700 W/m² y 50 K según los balances térmicos, con su intervalo del 95 %
verdict-lead-common-one-day = { $minuend } menos { $subtrahend }, potencia a 700 W/m² y 50 K según los balances térmicos, con su intervalo; no se ensayaron en varios días cada una, así que no es del 95 %
# { $pairs }: at least two.
verdict-in-all = Pares en los que se demuestra una diferencia: { $shown } de { $pairs }.
verdict-in-all-compared = Pares en los que se demuestra una diferencia: { $shown } de { $compared } que se pueden comparar ({ $pairs } en total).
verdict-untold-pairs = { $pairs ->
        [one] Un par no se puede
       *[other] { $pairs } pares no se pueden
    } comparar: la irradiancia media fue distinta y no ambas tienen balance térmico.
verdict-untold-pairs-planes = { $pairs ->
        [one] Un par no se puede
       *[other] { $pairs } pares no se pueden
    } comparar: la irradiancia de una está en otro plano que la de la otra.

## Comparison: the ranking
#
# Above its plot; then the headers of its columns, which have little room.

ranking-axis = Ps(50), W, con su intervalo del 95 %
ranking-axis-one-day = Ps(50), W, con su intervalo
page-ranking-campaign = campaña
# Over letters of groups, of which two campaigns that cannot be told apart have one in common.
page-ranking-groups = no se distinguen
# On a terminal: a difference with its interval and what it is of.
# As in English
terminal-lead = { $value } W ({ $interval } W): { $label }
# A header, over ranks.
terminal-rank = n.º
# Over cells such as "0.94 · 45 · 4", in two lines.
ranking-rests-on = R², intervalos, días
# For each square metre of intercept area, as the campaign files state it.
# As in English
ranking-per-area = W/m²
# { $currency }: as the tester wrote it.
# As in English
ranking-per-currency = W/{ $currency }
ranking-per-cost = W por unidad de costo
# Headers of a column of differences.
ranking-from-first = n.º 1 menos esta, W
ranking-from-baseline = respecto a la referencia, W
# Below the ranking.
# What a pair that is shown to differ holds for; with several pairs for all of them.
pairs-together = { $pairs ->
    [one] 95 %
   *[other] 95 % para los { $pairs } pares comparables en conjunto, Holm
}
pairs-note-alone = Un intervalo es solo de su par; lo que se demuestra vale para todos los pares en conjunto: una diferencia cuyo intervalo no incluye el cero puede quedar sin demostrar.
ranking-note-brackets = Una barra une las campañas que no se distinguen ({ pairs-together }); dos que no comparten barra difieren.
ranking-note-brackets-dash = Una barra une las campañas que no se distinguen ({ pairs-together }); dos que no comparten barra difieren, salvo que una tenga un guion.
# The same where letters stand in place of bars: on a web page and a terminal.
ranking-note-letters = Las campañas con una letra en común no se distinguen ({ pairs-together }); dos que no comparten letra difieren.
ranking-note-letters-dash = Las campañas con una letra en común no se distinguen ({ pairs-together }); dos que no comparten letra difieren, salvo que una tenga un guion.
ranking-note-all-apart = Todas se distinguen ({ pairs-together }).
# Where some have a dash in place of letters.
ranking-note-rest-apart = Todas las que no tienen guion se distinguen ({ pairs-together }).
ranking-note-alike = Abajo se indica de qué otras no se distingue cada campaña ({ pairs-together }).
# The same where numbers stand in the ranking itself.
ranking-note-alike-beside = «{ page-ranking-groups }»: los números de las campañas de las que no se distingue cada una ({ pairs-together }).
# These two follow one of the above.
ranking-note-undecided = Dos que no se pueden comparar cuentan como no distinguidas.
ranking-note-one-day = Dos que no se ensayaron en varios días cada una cuentan como no distinguidas, por mucho que difieran.
ranking-note-dash = Un guion: no se puede comparar con ninguna de las demás, o solo con otras que tienen guion.
ranking-note-not-held = Un guion en lugar de una barra: no se puede comparar con ninguna de las demás, o solo con otras que tienen guion.
ranking-note-not-held-letters = Un guion en lugar de letras: no se puede comparar con ninguna de las demás, o solo con otras que tienen guion.
ranking-note-differences = Diferencias con sus intervalos del 95 %. Negrita: demostrada ({ pairs-together }). Gris: no demostrada.
ranking-note-differences-one-day = Diferencias con sus intervalos, del 95 % salvo los marcados con †. Negrita: demostrada ({ pairs-together }). Gris: no demostrada.
# On a terminal, which has no bold type.
terminal-note-differences = Diferencias con sus intervalos del 95 %. Con un signo de interrogación delante: no demostrada ({ pairs-together }).
terminal-note-differences-one-day = Diferencias con sus intervalos, del 95 % salvo los marcados con †. Con un signo de interrogación delante: no demostrada ({ pairs-together }).
ranking-note-common = *: la irradiancia media fue distinta, así que la diferencia es la de las potencias a 700 W/m² y 50 K según los balances térmicos.
ranking-note-data = Todos los pares están en el archivo de datos.
page-ranking-continued = continuación
# Read out where a campaign has no bar.
page-ranking-alone = se distingue de todas las demás con las que se puede comparar
# Read out to those who do not see the plot.
ranking-alt = { $power } W, intervalo del 95 %: { $range } W
ranking-alt-one-day = { $power } W, intervalo sin días: { $range } W
# What the marks of the plot mean.
ranking-key-filled = Relleno: conforme.
ranking-key-open = Hueco: solo indicativo.
ranking-key-struck = Tachado: físicamente imposible, sin puesto.
ranking-key-arrow = Flecha: el intervalo sigue más allá del eje.
ranking-key-one-day = Los intervalos son del 95 %, salvo donde dice «{ status-one-day }».
# { $names }: campaigns, with ";" between them.
ranking-left-out = Sin resultado: { $names }.
# { $level }: one of those that begin with ratings-; { $reasons }: some of the next, in two or
# three words each.
# As in English
status-for = { $level }: { $reasons }
status-one-day = días fuera del ±
status-too-few-intervals = pocos intervalos
status-too-few-days = pocos días
status-r-squared-low = R² bajo
status-line-not-falling = la potencia no baja al calentarse el agua
status-no-useful-heat = sin calor útil a 50 K
status-extrapolated = 50 K no observado
status-load-off = otra carga
status-wind-not-measured = viento sin medir
status-wind-estimated = viento estimado a ojo
status-flat = sensor de irradiancia en horizontal
status-irradiance-missing = falta la irradiancia en algunas series
status-plane-not-stated = plano de la irradiancia sin indicar
status-impossible-gain = más calor que energía solar
status-own-limits-looser = límites más laxos
status-own-limits-tighter = límites más estrictos
status-excluded = tiempo excluido por el operador

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } a { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = Los resultados de { $second } y { $first } difieren en { $difference } W ({ $interval } W), pero { $second } se ensayó con { $second_sun } W/m² y { $first } con { $first_sun } W/m², y el resultado normalizado escala también las pérdidas con la irradiancia: por sí solos, los resultados no muestran si las cocinas difieren.
# In place of all that follows up to verdict-untold, where the plane of irradiance differs.
verdict-planes = Los resultados de { $second } y { $first } difieren en { $difference } W ({ $interval } W), pero la irradiancia de una está en otro plano que la de la otra, así que no se puede saber si las cocinas difieren.
# The sentence that follows is of that.
verdict-common = Lo que sigue se refiere a las potencias a 700 W/m² y 50 K, según los balances térmicos.
verdict-untold = Sin un balance térmico de ambas no se puede saber si las cocinas difieren.
# The sentence that follows is of that.
verdict-shown-more = { $second } da { $difference } W más que { $first } ({ $interval } W): una diferencia real.
verdict-shown-less = { $second } da { $difference } W menos que { $first } ({ $interval } W): una diferencia real.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } da { $difference } W más que { $first } ({ $interval } W), un { $share } %: una diferencia real.
verdict-shown-less-share = { $second } da { $difference } W menos que { $first } ({ $interval } W), un { $share } %: una diferencia real.
verdict-one-day-more = { $second } dio { $difference } W más que { $first } ({ $interval } W) al ensayarse, pero no en varios días cada una, de modo que los días por sí solos pueden explicarlo: ensaye ambas de nuevo en otros días.
verdict-one-day-less = { $second } dio { $difference } W menos que { $first } ({ $interval } W) al ensayarse, pero no en varios días cada una, de modo que los días por sí solos pueden explicarlo: ensaye ambas de nuevo en otros días.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = { $second } da { $difference } W más que { $first } ({ $interval } W), pero entre { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    } una diferencia así también se da por azar: no queda demostrada.
verdict-by-chance-less = { $second } da { $difference } W menos que { $first } ({ $interval } W), pero entre { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    } una diferencia así también se da por azar: no queda demostrada.
# One of the sentences that begin with needed- may follow.
verdict-not-shown-even = No se pudo demostrar ninguna diferencia entre { $second } y { $first }. { $second } menos { $first }: cualquier valor de { $interval } W es compatible con los datos.
verdict-not-shown-more = No se pudo demostrar ninguna diferencia entre { $second } y { $first }: { $difference } W más, y cualquier valor de { $interval } W es compatible con los datos.
verdict-not-shown-less = No se pudo demostrar ninguna diferencia entre { $second } y { $first }: { $difference } W menos, y cualquier valor de { $interval } W es compatible con los datos.
# "One" is a difference, in the next three.
needed-other-days = Ensaye ambas de nuevo en otros días.
# Before one of those that begin with needed-; "one" there is a difference of these two.
needed-of = Entre «{ $first }» y «{ $second }»:
needed-none = Una diferencia de { $sought } W (la décima parte de la potencia mayor) muy probablemente se habría visto.
needed-days = Con { $days ->
        [one] { $days } día más
       *[other] { $days } días más
    } como los ensayados, de cada una, muy probablemente se demostraría una diferencia de { $sought } W (la décima parte de la potencia mayor).
needed-no-number = Más días por sí solos difícilmente demostrarían una diferencia de { $sought } W (la décima parte de la potencia mayor): los días, o los instrumentos que no son los mismos según su id, difieren demasiado.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = Sin un balance térmico de ambas no se puede saber a qué se debe una diferencia.
cause-untold-planes = No se puede saber a qué se debe una diferencia, ya que no se pueden comparar ganancias con irradiancia en planos distintos.
# The next six are followed by cause-numbers.
cause-no-difference = Como no se demuestra ninguna diferencia, no se indica ninguna causa.
cause-not-shown = No queda demostrado a qué se debe la diferencia.
cause-more-gain = { $second } capta más energía solar que { $first }, como tras un cambio de la óptica.
cause-less-gain = { $second } capta menos energía solar que { $first }, como tras un cambio de la óptica.
cause-more-loss = { $second } pierde más calor por kelvin que { $first }, como con un aislamiento peor, más viento o sin tapa.
cause-less-loss = { $second } pierde menos calor por kelvin que { $first }, como con un aislamiento mejor, menos viento o con tapa.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } menos { $first }, según los balances térmicos: ganancia { $gain } m² ({ $gain_interval } m²), pérdida { $loss } W/K ({ $loss_interval } W/K).
# In a cell of the matrix, where the difference is real: what it comes from.
matrix-gain = ganancia
matrix-loss = pérdida
matrix-both = ganancia, pérdida

## Comparison: the matrix of differences

matrix-title = Fila menos columna, W
# Read out in place of a cell. { $verdict }: difference-real or difference-not-shown.
# As in English
matrix-alt = { $value } W, { $interval } W, { $verdict }
matrix-untold = no se puede saber
matrix-note = Ps(50), con intervalos del 95 %. Negrita: diferencia demostrada ({ pairs-together }). Gris: no demostrada.
matrix-note-one-day = Ps(50), con intervalos, del 95 % salvo los marcados con †. Negrita: diferencia demostrada ({ pairs-together }). Gris: no demostrada.
# † stands before it.
matrix-note-of-one-day = No se ensayaron en varios días cada una: el intervalo no es del 95 %, y no se demuestra ninguna diferencia.
# A star stands before it.
matrix-note-common = La irradiancia media difiere en más del { $percent } %: la diferencia es la de las potencias a 700 W/m² y 50 K según los balances térmicos.
matrix-note-untold = –: no se puede saber: la irradiancia media fue distinta y no ambas tienen balance térmico.
matrix-note-untold-planes = –: no se puede saber: la irradiancia de una está en otro plano que la de la otra.
matrix-note-untold-either = –: no se puede saber: la irradiancia de una está en otro plano que la de la otra, o su media fue distinta y no ambas tienen balance térmico.
matrix-note-cause = Ganancia, pérdida: a qué se debe la diferencia, hasta donde lo muestran los balances térmicos: energía solar captada, calor perdido.

## Comparison: lines and heating times

section-lines = Potencia frente a diferencia de temperatura
lines-caption = Potencia de cocción normalizada Ps en W frente a la temperatura del agua por encima del aire en K. En negro: la campaña nombrada sobre el panel, sus intervalos usados, su recta en las diferencias observadas con una banda del 95 % de dispersión, días e instrumentos, y su resultado a 50 K. Gris: las demás. Los errores que comparten las campañas están en cada banda, pero se anulan en una diferencia.
lines-caption-one-day = Potencia de cocción normalizada Ps en W frente a la temperatura del agua por encima del aire en K. En negro: la campaña nombrada sobre el panel, sus intervalos usados, su recta en las diferencias observadas con una banda de dispersión, días e instrumentos (del 95 %; de un solo día, sin los días y no del 95 %), y su resultado a 50 K. Gris: las demás. Los errores que comparten las campañas están en cada banda, pero se anulan en una diferencia.
# Read out to those who do not see the panel.
lines-alt = Recta Ps = { $intercept } W { $slope } W/K · Td; a 50 K { $power } W, intervalo del 95 %: { $range } W
lines-alt-one-day = Recta Ps = { $intercept } W { $slope } W/K · Td; a 50 K { $power } W, intervalo sin días: { $range } W
# { $shown }: those with most power.
comparison-first-only = Se muestran las primeras { $shown } de { $campaigns }; todas están en el archivo de datos.
section-heating = Tiempos de calentamiento
heating-title = { $load } de agua de { $start } a { $target } con { $irradiance } W/m²
heating-note = Según el balance térmico de cada campaña con { $irradiance } W/m², con aire a { $ambient } para todas, con su intervalo del 95 %; sin contar el calor de la propia olla. Una flecha: el intervalo sigue más allá del eje, o puede que el agua no llegue.
heating-note-one-day = Según el balance térmico de cada campaña con { $irradiance } W/m², con aire a { $ambient } para todas, con su intervalo (del 95 %, salvo si es de un solo día); sin contar el calor de la propia olla. Una flecha: el intervalo sigue más allá del eje, o puede que el agua no llegue.

## Comparison: what a reader must know first

# "The first" is the campaign that was named first.
departure-procedure = procedimiento { $here } donde la primera tiene { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = { $limit } { $here } donde la primera tiene { $there }
# The same on paper. { $limit }: one of those that begin with limit-. { $here }, { $there }: with
# their units, or departure-none.
departure-limit-said = { $limit } { $here } en lugar de { $there }
departure-least-said = { $limit }: al menos { $here }
departure-most-said = { $limit }: como máximo { $here }
departure-none-said = sin límite para { $limit }
departure-procedure-said = procedimiento { $here } en lugar de { $there }
departure-guard-said = límites con banda de guarda
departure-no-guard-said = límites sin banda de guarda
departure-none = ninguno
# What a reader must know first: a label, and what is said. { $campaigns }: one or two titles, or
# calls-numbers.
page-caveats = Antes de basarse en ello
caveat-not-valid = No válido
caveat-not-valid-text = { $campaigns }: el agua ganaría más calor que la energía solar que incide en la cocina. Compruebe el área de captación, la carga y las unidades. Sin puesto, y no se da ninguna diferencia de resultados.
caveat-no-rating = Sin resultado
caveat-no-rating-text = { $campaigns }: solo se pueden comparar las demás cifras.
caveat-indicative = Solo indicativo
caveat-indicative-text = { $campaigns }. Una diferencia con una campaña así no es más fiable que su resultado.
caveat-few-days = Pocos días
caveat-few-days-text = { $campaigns }: intervalos usados de uno o dos días, así que apenas se sabe cuánto difieren los días.
caveat-limits = Límites
# { $first }: calls-name of the campaign that was named first. caveat-limits-one of the others
# follow.
caveat-limits-text = No se evaluaron con los mismos límites que { $first }, y se comparan a pesar de ello.
# { $departures }: some of departure-…-said, with ";" between them.
# As in English
caveat-limits-one = { $campaigns }: { $departures }.
caveat-irradiance = Irradiancia
# { $ways }: some of caveat-irradiance-one, or one caveat-irradiance-all, with ";" between them.
caveat-irradiance-text = No se midió del mismo modo: { $ways }.
# Follows it.
caveat-irradiance-uncovered = Las incertidumbres no cubren aquí que un sensor estuviera en horizontal o que no se indique su plano.
caveat-irradiance-same = En todas las campañas: { $ways }.
# { $way }: one of the next four.
# As in English
caveat-irradiance-one = { $way }: { $campaigns }
# As in English
caveat-irradiance-all = { $way }
caveat-way-normal = sensor de cara al sol
caveat-way-flat = sensor en horizontal
caveat-way-not-stated = plano sin indicar, se supone de cara al sol
caveat-way-estimated = estimada { $way }
# { $name }: a place or a person.
# As in English
caveat-group = { $name }: { $campaigns }
caveat-sites = Lugares
caveat-sites-text = { $sites }. El cielo, el aire y el viento no fueron los mismos.
caveat-testers = Operadores
# As in English
caveat-testers-text = { $testers }.
caveat-sensors = Sensores
caveat-sensors-none = Ninguna pareja de campañas da un mismo id al sensor de irradiancia: ningún error de los sensores de irradiancia se anula en una diferencia.
# { $groups }: some of calls-numbers, with ";" between them.
caveat-sensors-text = El mismo sensor de irradiancia, por su id: { $groups }. En todas las demás diferencias no se anula ningún error de los sensores de irradiancia.
# Follows either of the two, where irradiance was estimated.
caveat-sensors-one-sky = El error de las estimaciones hechas del mismo modo, en un mismo lugar y los mismos días, se anula de todos modos.

## Comparison: the figure


## Comparison: tables of page one

# Means over the used intervals.
ratings-conforms = conforme
ratings-conforms-with-notes = conforme con notas
ratings-indicative = solo indicativo
ratings-not-valid = no válido
ratings-no-rating = sin resultado
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
# As in English
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
# As in English
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – nunca)
heating-never = no llega

## Comparison: caution on page one

caution-compared = Las superficies calientes y el vapor queman, el foco puede cegar y provocar incendios, y estos resultados no dicen nada sobre la seguridad de los alimentos. Lea las advertencias de la sección { $section } antes de cocinar. Las normas locales y la práctica de los profesionales habilitados prevalecen.

## Comparison: differences

section-differences = La diferencia y en qué se basa
# Labels, with little room.
difference-verdict = diferencia
# As in English
difference-p = p
difference-method = dispersión y días
# A difference with its 95 % interval, in watts.
# As in English
difference-with-interval = { $difference } (95 %: { $interval })
difference-with-interval-one-day = { $difference } (no 95 %: { $interval })
# Whether the difference is real.
difference-apart = por sus propios días
difference-paired = emparejadas por día, { $days ->
        [one] { $days } día
       *[other] { $days } días
    }
# As in English
difference-real = real
difference-not-shown = no demostrada
# In place of real and not shown, where irradiance differed.
difference-scaled = distinta irradiancia
# The same where the plane of irradiance differed.
difference-planes = distinto plano
# As in English
difference-of-ratings = Ps(50)
difference-of-common = potencia a 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = Incertidumbre de la diferencia: { $figure }
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
page-comparison-source = fuente
page-comparison-shared = en la diferencia
page-comparison-apart = si no compartieran nada
pair-budget-scatter = dispersión y días
pair-budget-combined = combinada
pair-budget-expanded = expandida, 95 %, k = { $factor }
pair-budget-expanded-one-day = expandida, sin días y no del 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = Las campañas
page-campaigns-alike = Igual en todas las campañas
campaigns-type = tipo
campaigns-tests = Cocinas y ensayos
campaigns-area = área de captación
campaigns-mass = masa
campaigns-cost = costo
campaigns-dates = ensayada
campaigns-runs = series
campaigns-place = lugar
campaigns-tester = operador
campaigns-report = informe
campaigns-results = Rectas, balances térmicos, condiciones
# a and b are symbols; Ps and Td too.
campaigns-line = Recta Ps = a − b·Td
# As in English
campaigns-intercept = a, W
# As in English
campaigns-slope = b, W/K
campaigns-range = de – a
# As in English
campaigns-r-squared = R²
campaigns-intervals = intervalos
campaigns-days = días
campaigns-balance = Balance térmico, con ±
campaigns-gain = ganancia, m²
campaigns-loss = pérdida, W/K
campaigns-power = W a 700 W/m², 50 K
campaigns-around = Medias de los intervalos usados
# As in English
campaigns-sun = W/m²
campaigns-air = aire
campaigns-wind = viento
# Below or in place of a table of instruments.
campaigns-instruments-described = Cada fila es una descripción, que puede ser de varios instrumentos: solo con un id entre paréntesis es uno y el mismo en todas sus campañas.
campaigns-instruments-many = { $count } instrumentos en total: cada uno figura en el informe de su campaña.
campaigns-all = Todas
comparison-not-stated = sin indicar

## Comparison: method and provenance

section-method = Método y procedencia
page-comparison-made-with = Hecho con
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 para cada resultado; JCGM 100:2008 para las diferencias
comparison-note-ratings = Cada resultado es el de la norma: Ps(50), leído de la recta en Td = 50 K. Escala la potencia en proporción a 700 W/m², también las pérdidas. Donde la irradiancia media de ambos ensayos es semejante, la diferencia que se llama real o no demostrada es la de los resultados.
comparison-note-suns = Donde la irradiancia media difiere en más de { $percent } %, es la diferencia de las potencias a 700 W/m² y 50 K según los balances térmicos. Un balance térmico es P = g·G − u·Td, ajustado a todos los intervalos con lecturas fiables. Supone que la ganancia g y la pérdida u son las mismas con ambas irradiancias; el efecto del viento no se corrige.
comparison-note-planes = Donde la irradiancia de una está en otro plano que la de la otra, ninguna diferencia se llama real o no demostrada: ni los resultados ni las ganancias por W/m² son entonces comparables.
comparison-note-uncertainty = La incertidumbre de una diferencia contiene la dispersión y los días de ambas campañas, cada una omitiendo un día cada vez, y lo que sus instrumentos no comparten. Los instrumentos son el mismo donde los archivos de campaña dan un mismo id; los que no tienen id cuentan como distintos, lo que aumenta la incertidumbre. El error de una estimación de la irradiancia es uno solo donde ambas se estimaron del mismo modo, en un mismo lugar y los mismos días. El calor específico es común a todas.
comparison-note-paired = Donde ambas se ensayaron los mismos días en un mismo lugar, tres días o más, cada día se omite de las dos a la vez, de modo que lo que un día hace a ambas se anula: aquí en { $paired } de { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    }.
comparison-note-p = p es la probabilidad de una diferencia tan grande si no hay ninguna (t de Student, Cochran & Cox); el valor p corregido tiene en cuenta { $pairs ->
        [one] { $pairs } par que se puede comparar
       *[other] { $pairs } pares que se pueden comparar
    } por el método de Holm. Ambos son de la diferencia que decide: la de los resultados, o la de las potencias a 700 W/m². Una diferencia se llama real donde el valor p corregido es menor que 0,05 y ambas se ensayaron en varios días.
comparison-note-groups = Las campañas que no se distinguen no tienen por qué ser iguales: la primera puede no distinguirse de la segunda ni la segunda de la tercera, y diferir la primera y la tercera. Los grupos son los de la representación compacta por letras (Piepho 2004, Journal of Computational and Graphical Statistics 13, 456–466): de las campañas que se pueden comparar entre sí, directamente o a través de otras, dos tienen uno en común exactamente si no se distinguen, no se pueden comparar o no se ensayaron en varios días cada una.
comparison-note-causes = Las causas se deducen de las diferencias de g y de u, cada una con dispersión, días e instrumentos. Se indica una causa donde una diferencia es real y el valor p de g o de u es menor que 0,05; estos valores p no están corregidos por el número de pares.
comparison-note-needed = Días que faltan: para una probabilidad de cuatro entre cinco de demostrar una diferencia de ese tamaño al 95 %, si los días y la dispersión siguen como se observaron.
comparison-note-reports = Cada resultado tiene su propio informe, con sus lecturas, condiciones y balance de incertidumbre.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
plan-day = { $weekday }, { $date }
# On the terminal; { $day }: plan-day, { $title }: the campaign's.
# As in English
plan-title = { $day }: { $title }
plan-title-none = { $day }: ninguna hora de este día sirve, así que no hay hoja de campo. { $title }
# Labels of lines on the terminal, and headers of its table of the sun: there is little room.
plan-run = serie
plan-lacks = falta
plan-place = lugar
plan-place-text = { $site }, hora de { $zone }
plan-elevation = altura, °
plan-azimuth = acimut, °
# As in English
plan-normal = normal, W/m²
# As in English
plan-horizontal = horizontal, W/m²
# As in English
plan-range = 95 %, { $unit }
plan-range-one-day = intervalo, { $unit }
plan-power = potencia, W
plan-not-rated = planificado como para un primer día, porque los registros aún no dan un resultado
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
plan-sun-course = sale a las { $rise }, mediodía solar a las { $noon }, se pone a las { $set }
plan-sun-no-rise = no sale, mediodía solar a las { $noon }, se pone a las { $set }
plan-sun-no-set = sale a las { $rise }, mediodía solar a las { $noon }, no se pone
plan-sun-neither = no sale, mediodía solar a las { $noon }, no se pone
plan-sun-always = no se pone; mediodía solar a las { $noon }
plan-sun-never = no sale
# The hours about noon in which the practice lets one test.
plan-window = ventana solar
plan-window-text = de { $clocks } según el reloj ({ $from } a { $to } de hora solar)
# Two times of day.
plan-clocks = { $from } a { $to }
plan-clear-sky = cielo despejado
# plan-too-much may follow, after a semicolon.
plan-enough-all-through = { $least } W/m² o más en el plano normal a la radiación directa de { $clocks }, es decir, durante toda la ventana solar
plan-enough-in-window = { $least } W/m² o más en el plano normal a la radiación directa de { $clocks }, en la ventana solar de { $usable }
plan-too-much = por encima de { $most } W/m² los intervalos también se descartan, y un cielo muy despejado da aquí hasta { $highest }
plan-enough-outside = { $least } W/m² solo de { $clocks }, fuera de la ventana solar: no se puede usar ningún intervalo de este día
plan-never-enough = nunca llega a { $least } W/m² (como máximo { $highest }): no se puede usar ningún intervalo de este día
plan-water = agua
# { $load }, { $each }, { $vessel }: masses with their unit. plan-load-stated may follow, after
# a semicolon.
plan-load-one = { $load }: { $each } por m² de área de captación ({ $area }), en un recipiente
plan-load-several = { $load }: { $each } por m² de área de captación ({ $area }), { $vessel } en cada uno de { $vessels } recipientes
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
plan-high-sun-weak = como mucho { $highest } W/m² en el plano normal a la radiación directa: un estancamiento solo vale por encima de { $least } W/m², así que elija otro día para ello
plan-high-sun-none = como mucho { $highest } W/m² en el plano normal a la radiación directa: no sirve ninguna hora de este día
plan-dry-begin = con el recipiente vacío y seco, tan frío como el aire, con la tapa puesta, y la cocina orientada
plan-dry-read = el recipiente cada 5 a 20 min y el aire al menos una de cada dos veces, hasta que el recipiente lleve media hora sin cambiar; una hora con un termómetro de aguja de 10 °F o 5 °C por división
plan-dry-read-sun = el recipiente y la irradiancia cada 5 a 20 min y el aire al menos una de cada dos veces, hasta que el recipiente lleve media hora sin cambiar; una hora con un termómetro de aguja de 10 °F o 5 °C por división
plan-cooling-load = tanta como en las series de calentamiento, { $load }
plan-cooling-load-unstated = tanta como en las series de calentamiento; pésela
plan-cooling-begin = con el agua cerca de hervir (aquí hierve a { $boiling }), la tapa puesta, la cocina a la sombra o apartada del sol
plan-cooling-read = el agua cada { $minutes } min, el aire al menos una de cada dos veces; la irradiancia no hace falta
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = cuando el agua esté { $difference } por encima del aire, por ejemplo { $end } con aire a { $air }
# To turn the cooker to the sun.
plan-aim = orientar
plan-aim-unknown = el semiángulo de aceptación está sin indicar, así que no se dan horas. Práctica habitual, sin fuente publicada: un reflector poco profundo de muchas caras, cada 45 minutos más o menos, en los que el sol se mueve unos 11°; un disco de foco estrecho, cada 10 a 15.
plan-aim-no-time = no se puede usar ninguna hora de este día
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = solo a las { $clocks }: { $angle }° bastan para toda la ventana
plan-aim-drive = todo el tiempo, con un mecanismo de seguimiento: el sol se mueve { $angle }° en menos de { $time }
plan-aim-at = a las { $clocks }; en ese tiempo ({ $minutes } min) el sol se mueve { $angle }°, el semiángulo de aceptación
plan-aim-every = cada { $minutes } min desde las { $first }; en ese tiempo el sol se mueve { $angle }°, el semiángulo de aceptación
plan-aim-shown = { $when }. El ángulo está sin indicar: es el extremo inferior de lo que muestran las series hasta ahora, { $shown }

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
    }; un calentamiento de esta carga da alrededor de { $heating }; después, empiece de nuevo con agua fresca.

## Field sheet: before the first reading

check-shade = cocina sin sombra hasta el final
check-wind = viento flojo: el humo se desvía, las hojas no se mueven
check-weighed = masa de agua con balanza, no a tazas
check-sensor = sensor en el agua, a 10 mm del fondo, sin tocar la pared
check-lid = tapa puesta, sin quitarla
check-air = termómetro del aire a la sombra, fuera de la luz de la cocina
check-irradiance = sensor de irradiancia limpio y de cara al sol
check-irradiance-flat = sensor de irradiancia limpio y en horizontal, junto a la cocina
check-aimed = orientada, y nada que arda cerca del foco
check-empty = recipiente vacío, seco y limpio: sin agua, comida ni grasa
check-no-plastic = sin plástico ni recubrimiento antiadherente: supera con mucho los 100 °C
check-dial = termómetro dentro o encima del recipiente, fuera del haz; se queda ahí
check-mirrors = espejos de la caja tapados o plegados, para sus figuras de mérito
check-no-sun = cocina sin sol hasta el final: a la sombra o apartada
check-in-place = olla en su sitio dentro de la cocina, como cuando calienta
# Lines to write on.
sheet-tester = operador
sheet-weighed = masa de agua, { $unit }
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
sheet-sky = cielo: despejado o nubes
sheet-irradiance = irrad., W/m²
sheet-expected = esperada, { $unit }
sheet-aim = orientar
sheet-notes = notas

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Viento a ojo, Beaufort (WMO-No. 8): { $forces }.
# As in English
sheet-force = { $number } { $sign } ({ $speeds })
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
# { $spread }: "95 %", or plan-spread-one-day.
plan-expected = Lo que se espera de la cocina según su resultado hasta ahora, Ps(50) = { $power } W ± { $expanded } W ({ $spread }): { $load } calentados desde { $start } con cielo despejado y aire a { $air }, como en sus ensayos; con su intervalo. Un agua muy por debajo de eso indica bruma, viento, mala orientación o una tapa suelta.
# As in English
plan-spread = 95 %
plan-spread-one-day = no es el 95 %
# The models behind the numbers.
plan-models = Cielo despejado según Ineichen y Perez 2002 para { $elevation }, turbidez de Linke { $turbidity } (habitual con cielo despejado); la bruma y el polvo dan menos. Sol según NREL/TP-560-34302; horizonte plano.
plan-models-stated = Cielo despejado según Ineichen y Perez 2002 para { $elevation }, turbidez de Linke { $turbidity } (la indicada); la bruma y el polvo dan menos. Sol según NREL/TP-560-34302; horizonte plano.
page-sheet-checks = Antes de la primera lectura
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = Lo que se anota en cada lectura
page-sheet-caution = Advertencia.
caution-field-sheet = Nunca mire hacia el foco ni al sol. El metal caliente y el vapor queman: guantes, tapa hacia el lado opuesto a usted. Mantenga lejos a los niños y todo lo que arda; permanezca junto a la cocina; apártela del sol antes de meter la mano; átela contra el viento. Sombra y agua para usted. Tire el agua del ensayo. Las normas locales y la práctica de los profesionales habilitados prevalecen.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = Un recipiente vacío supera con mucho los 100 °C: quema al tocarlo y sigue caliente mucho después. El plástico se funde y los recubrimientos desprenden humos: no use ninguno de los dos. Nunca eche agua en él mientras está caliente: salpica y se raja. La hierba seca, la tela y los restos de grasa en el suelo se prenden: suelo despejado, agua o arena a mano, y alguien que se quede. Nunca mire hacia el foco ni al sol; aparte la cocina de él antes de meter la mano; guantes secos. Mantenga lejos a los niños; átela contra el viento. Sombra y agua para usted. Las normas locales y la práctica de los profesionales habilitados prevalecen.
caution-field-sheet-cooling = Va a llevar una olla de agua casi hirviendo: camino despejado, nadie en él, la tapa sujeta, las dos manos con guantes secos; mejor dejarla en el suelo que apurarse. El vapor quema: tapa hacia el lado opuesto a usted. Nunca mire hacia el foco ni al sol; aparte la cocina de él, o hágale sombra, antes de meter la mano, y fíjese adónde va entonces el foco. Mantenga lejos a los niños; permanezca junto a la cocina. Tire el agua del ensayo. Las normas locales y la práctica de los profesionales habilitados prevalecen.

## Kinds of run, and what vessels store

run-kind-water = calentamiento de agua
run-kind-cooling = enfriamiento, a la sombra
run-kind-dry = recipiente vacío
vessel-heat-stated = indicada en el archivo de campaña
vessel-heat-weighed = { $mass } de { $material } a { $heat } J/(kg K) (EN 12524:2000, tal como la recoge una biblioteca abierta)
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
tested-no-water = ninguna: ninguna serie de esta campaña calienta agua
tested-vessel-temperature = temperatura del recipiente
error-vessel-temperature = termómetro del recipiente
error-vessel-heat = capacidad calorífica de los recipientes
known-vessel-heat = dentro de un { $percent } % de lo indicado
budget-not-told-apart = sin desglosar en este informe
tested-instruments-note-dry = Incertidumbres estándar (k = 1); de una clase, sus límites. Donde no se indica ninguna de las dos, se supone la clase más desfavorable: para el recipiente, un termómetro de horno de aguja dentro de ± 10 K (práctica habitual).

## Page one of a campaign that heats no water

report-kind-without-water = Informe de ensayos de una cocina solar, sin resultado
headline-label-none = Aún sin valor
headline-no-water = Sin resultado según ASAE S580.1: ninguna serie de esta campaña calienta agua.
headline-spread = Intervalo del 95 %: días, lecturas, instrumentos.
headline-spread-one-day = Intervalo sin días: lecturas, instrumentos; no del 95 %.
headline-dry-plateau = Con { $irradiance } W/m² el recipiente vacío llegó a { $vessel }: { $difference } por encima del aire, que estaba a { $ambient }.
fact-reached = Alcanzó
fact-good-for = Sirve para
fact-not-with = No comparar con
headline-no-water-means = Nada de esto es una potencia de cocción. Caliente una carga de agua de masa conocida para saber con qué rapidez cuece la cocina.
headline-nothing-drawn = No se pudo representar nada: las deficiencias dicen por qué.

## All figures at a glance (page two)

summary-title = Todas las cifras de un vistazo
# Headers of a table of four columns.
page-summary-figure = cifra
page-summary-value = valor ± semiamplitud
page-summary-good-for = sirve para
page-summary-not-with = no comparar con
summary-one-day = (no 95 %)
summary-indicative = (indicativo)
summary-note = Cada ± es del 95 %: días, lecturas (con su dispersión donde se ajusta una recta) e instrumentos, con la incertidumbre que se indica o se supone. Las áreas cuentan como exactas.
# The same where figures without days are among them; the next message follows it.
summary-note-some = Cada ± es del 95 %, salvo donde dice «no 95 %»: días, lecturas (con su dispersión donde se ajusta una recta) e instrumentos, con la incertidumbre que se indica o se supone. Las áreas cuentan como exactas.
summary-note-one-day = Donde dice «no 95 %», el ± no incluye la variación entre días, así que no es del 95 %.
summary-note-indicative = Donde dice «indicativo», no se cumplieron las condiciones del procedimiento, o la irradiancia es estimada.
figure-ps50 = potencia de cocción normalizada
figure-ps50-good-for = comparar cocinas ensayadas según la misma norma
figure-ps50-not-with = la potencia con otra irradiancia, o resultados según otra norma
figure-gain = ganancia del sol
figure-gain-good-for = calcular la potencia con cualquier irradiancia, junto con u
figure-gain-not-with = la ganancia medida con un sensor en otro plano
figure-loss = pérdida al aire
figure-loss-good-for = ver qué aporta el aislamiento
figure-loss-not-with = la pérdida con otro viento, o por m²
figure-opto-thermal-ratio = cociente optotérmico
figure-opto-thermal-ratio-good-for = saber cuánto puede calentarse una carga, sea cual sea su tamaño
figure-opto-thermal-ratio-not-with = F1, que es de la cocina vacía
figure-dry-difference = recipiente vacío por encima del aire, por W/m²
figure-dry-difference-good-for = comparar versiones de una cocina con la misma olla
figure-dry-difference-not-with = otras ollas, o un sensor en otro plano; no es una potencia de cocción
figure-f1 = primera figura de mérito
figure-f1-good-for = comparar cocinas de caja, vacías
figure-f1-not-with = valores con el sensor orientado al sol, o con los espejos descubiertos
figure-f2 = segunda figura de mérito
figure-f2-good-for = comparar cocinas de caja con carga completa
figure-f2-not-with = otras cargas, u otros extremos de la subida
figure-box-boiling = tiempo desde el ambiente hasta hervir
figure-box-boiling-good-for = saber cuánto tarda esta carga con esta irradiancia
figure-box-boiling-not-with = tiempos con otra carga, irradiancia o altitud
figure-time-constant = constante de tiempo del enfriamiento
figure-time-constant-good-for = saber cuánto tiempo se mantiene caliente esta carga a la sombra
figure-time-constant-not-with = otras cargas: crece con el agua
figure-loss-factor = factor de pérdidas
figure-loss-factor-good-for = comparar recipientes y sus envolturas
figure-loss-factor-not-with = factores de otra superficie, o con otro viento
figure-optical-factor = factor óptico
figure-optical-factor-good-for = comparar espejos y orientación
figure-optical-factor-not-with = factores según la irradiancia directa, si aquí es la global
figure-dish-boiling = tiempo desde el ambiente hasta hervir
figure-dish-boiling-good-for = saber cuánto tarda esta carga con esta irradiancia
figure-dish-boiling-not-with = tiempos con otra carga, irradiancia o altitud
figure-energy = eficiencia energética
figure-energy-good-for = comparar ensayos en el mismo rango de temperaturas del agua
figure-energy-not-with = la eficiencia en otro rango, o con una carga fría
figure-exergy = eficiencia exergética
figure-exergy-good-for = lo mismo que la energética, pero el agua caliente cuenta más
figure-exergy-not-with = valores con otra temperatura del sol u otro rango
figure-peak-exergy = exergía máxima
figure-peak-exergy-good-for = comparar cocinas de un mismo tamaño con la misma irradiancia
figure-peak-exergy-not-with = máximos con otra irradiancia
figure-quality-factor = factor de calidad
figure-quality-factor-good-for = comparar ganancia y pérdida en el máximo
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
procedure-spread = ± del 95 %: días, lecturas, instrumentos
procedure-spread-one-day = ± sin días, no del 95 %: lecturas, instrumentos
page-procedure-quantity = magnitud
procedure-boiling = El tiempo hasta hervir es para { $load } de agua de { $ambient } a { $boiling }, su punto de ebullición aquí, con { $irradiance } W/m² constantes: las medias del ensayo. Está calculado, no cronometrado.
# { $limit }, °C.
evaporation = por encima de { $limit } una parte del calor se va en vapor, lo que ninguna temperatura muestra: las cifras valen para una tapa cerrada y cuentan el vapor como pérdida
evaporation-remedy = deje puesta la tapa; compare solo ensayos que terminen a temperaturas parecidas

## Dry vessel

section-dry-vessel = Recipiente vacío
dry-what = Un recipiente vacío y oscuro, o una placa desnuda, se deja al sol hasta que ya no se calienta más. Su temperatura por encima del aire, por W/m², relaciona la energía recibida con las pérdidas. No es una potencia de cocción.
dry-plane-normal = La irradiancia es la de un sensor orientado al sol.
dry-plane-horizontal = La irradiancia es la de un sensor en horizontal: compare solo con otros ensayos que lo tuvieran así.
dry-plane-estimated = La irradiancia es estimada.
dry-plane-not-stated = El plano del sensor de irradiancia está sin indicar: no compare con ningún otro valor.
# { $runs }: more than one.
dry-mean-of = El valor es la media de { $runs ->
    [one] { $runs } serie
   *[other] { $runs } series
} con estancamiento.
# Headers of a table with a row a run: there is little room.
dry-head-run = serie
dry-head-plateau = estanc., { $unit }
dry-head-ambient = aire, { $unit }
dry-head-irradiance = irrad., W/m²
# As in English
dry-head-difference = K m²/W
dry-head-initial = subida inicial, K/min
dry-head-reached = min hasta { $level }
dry-caption = Temperatura del recipiente vacío desde el inicio de cada serie; trazo grueso: el estancamiento.
dry-alt = Gráfico de líneas de la temperatura del recipiente vacío frente al tiempo, de { $runs ->
    [one] { $runs } serie
   *[other] { $runs } series
}. La lectura más alta es de { $highest }.
dry-axis-time = tiempo desde la primera lectura, min
dry-axis-vessel = recipiente, { $unit }
dry-key-vessel = lecturas
dry-key-plateau = estancamiento
dry-source = Estancamiento, según la interpretación de este proyecto: el tramo más caliente de al menos diez minutos, más largo con un termómetro de aguja de divisiones gruesas, en que el recipiente sube o baja menos de 0,1 K/min y la irradiancia queda dentro de ± 20 W/m² y por encima de 600 W/m². El cociente es el que Mullick, Kandpal y Saxena 1987 usan para cocinas de caja. Subida inicial: en los diez primeros minutos, o entre las dos primeras lecturas.
dry-no-vessel = el registro no tiene la temperatura del recipiente
dry-no-vessel-remedy = nombre la columna del recipiente como vessel_temperature bajo [columns]; si el recipiente tenía agua, escriba kind = "water"
dry-no-irradiance = el registro no tiene irradiancia, así que el estancamiento no se puede relacionar con ella
dry-no-irradiance-remedy = anote la irradiancia con cada lectura, o declare tramos sin nubes y estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = las lecturas que cuentan no cubren sin hueco los { $minutes } min que requiere un estancamiento con este termómetro
dry-too-short-remedy = siga leyendo, al menos cada veinte minutos, hasta que la temperatura se haya mantenido durante { $minutes } min
dry-sun-unsteady = la irradiancia nunca se mantuvo dentro de ± 20 W/m² de su media durante { $minutes } min
dry-sun-unsteady-remedy = ensaye con cielo despejado en torno al mediodía solar
dry-sun-weak = la irradiancia fue constante, pero de { $highest } W/m² como máximo, por debajo de 600 W/m²
dry-sun-weak-remedy = ensaye en torno al mediodía solar, en una estación con más sol, o sin bruma
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = sin estancamiento: en su tramo constante más caliente, a { $vessel }, el recipiente aún subía { $rate } K/min
dry-still-falls = sin estancamiento: en su tramo constante más caliente, a { $vessel }, el recipiente bajaba { $rate } K/min
dry-still-moves-remedy = empiece antes, oriente de nuevo y siga hasta que se mantenga

## Box cooker

section-box-cooker = Figuras de mérito de una cocina de caja
box-what = F1 = (Tp − Ta)/H: cuánto se eleva la caja vacía sobre el aire por W/m² en el plano horizontal. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))]: con qué eficacia pasa su calor a una carga completa, según el tiempo τ en que el agua sube ΔT; T, Ta y H son medias de ese tiempo.
box-grade = grado
box-grade-a = A: todo el intervalo de F1 está por encima de { $limit } K m²/W (IS 13429)
box-grade-none = ninguno: el intervalo de F1 no está entero por encima de { $limit } K m²/W, el límite del grado A (IS 13429); los grados inferiores no se evalúan
box-rests-on-dry = F1 se basa en { $runs ->
    [one] { $runs } serie en seco
   *[other] { $runs } series en seco
} con estancamiento.
box-rests-on-water = F2 se basa en { $runs ->
    [one] { $runs } subida
   *[other] { $runs } subidas
} del agua de { $from } a { $to }.
box-caption = Agua frente al tiempo desde que pasó la primera temperatura de la subida; trazo grueso: lo que dan F1 y F2 con una irradiancia constante de la misma media.
box-alt = Gráfico de líneas de la temperatura del agua frente al tiempo, de { $runs ->
    [one] { $runs } subida
   *[other] { $runs } subidas
} de { $from } a { $to }, con las curvas que dan F1 y F2.
box-axis-time = tiempo desde el inicio de la subida, min
box-axis-water = agua, { $unit }
box-key-water = lecturas
box-key-told = según F1 y F2
box-source = Mullick, Kandpal y Saxena 1987 (Solar Energy 39, 353–360) e IS 13429. Escriben F2 con el logaritmo de ambos extremos: lo mismo con irradiancia constante, y hasta un 2 % distinto si esta cambia en una décima parte, más donde F1·H está cerca del final de la subida (simulado). Calculan la ebullición a 100 °C; este informe, al punto de ebullición local. No se da un valor mínimo para F2: se citan dos, y no coinciden.
box-no-dry-run = no hay ninguna serie en seco, así que no hay F1, ni F2, que se basa en ella
box-no-dry-run-remedy = deje la caja vacía al sol en torno al mediodía y registre su placa: kind = "dry"
box-no-plateau = ninguna serie en seco tiene estancamiento, así que no hay F1, ni F2
box-no-plateau-remedy = mire qué les falta a las series en seco
box-plane-normal = la irradiancia se midió de cara al sol; F1 y F2 están definidas para un sensor en horizontal
box-plane-not-stated = el plano del sensor de irradiancia está sin indicar; F1 y F2 están definidas para un sensor en horizontal
box-plane-estimated = la irradiancia es estimada; F1 y F2 están definidas para un sensor en horizontal
box-plane-remedy = ponga el sensor en horizontal junto a la caja, e indique plane = "horizontal"
box-cover-mirrors = F1 y F2 son para una caja con los espejos reflectores, si los tiene, cubiertos; ningún registro lo muestra
box-cover-mirrors-remedy = cúbralos en estas series, y dígalo en las notas
box-no-water-run = ninguna serie calienta agua, así que no hay F2
box-no-heating = no hay ninguna subida de { $from } a { $to } °C sin hueco y con irradiancia en { $runs ->
    [one] { $runs } serie
   *[other] { $runs } series
} con agua, así que no hay F2
box-no-heating-remedy = empiece por debajo de { $from }, siga hasta pasar de { $to }, y lea al menos cada veinte minutos
box-runs-left-out = series con agua sin una subida entera de { $from } a { $to } °C, no usadas: { $runs }
# Loads in kg/m².
box-load-off = la carga fue de { $load }; una carga completa es de unos { $full }
box-load-off-remedy = pese { $full } kg de agua por m² de vidrio; el ensayo de la potencia normalizada pide 7 kg por m² de área de captación, así que una sola carga no siempre cumple ambas
# Both in K.
box-beyond-reach = en { $rises ->
    [one] { $rises } subida
   *[other] { $rises } subidas
} el agua llegó a { $end } por encima del aire, más de lo que permite esta F1: ahí F1·H es de { $reach }. Una subida así no se usa
box-no-upper-end = F1·H es de { $reach }, tan cerca de los { $end } en que la temperatura final del agua excede la del aire que F2 no tiene extremo superior
box-near-reach = la temperatura final del agua, { $end } por encima del aire, está cerca de F1·H, { $reach }: con F1 un 1 % menor, F2 sale un { $more } % mayor
box-reach-remedy = ensaye con mayor irradiancia, o termine la subida a una temperatura más baja
box-one-day = las series en seco o las subidas son de un solo día, así que los intervalos no son del 95 %
box-one-day-remedy = ensaye otros días

## Concentrating cooker

section-dish = Ensayo de enfriamiento y calentamiento
dish-what = A la sombra, la temperatura de la carga por encima del aire decae con la constante de tiempo τ0; su pérdida es C/τ0, con la capacidad calorífica C del agua y los recipientes. F′UL es esa pérdida por m² de superficie de los recipientes. Al sol, F′η0 es la fracción de la radiación sobre el área de captación que absorbe la carga, sin descontar las pérdidas.
dish-loss = pérdida al aire por enfriamiento, F′UL·At
dish-rests-on-cooling = La pérdida se basa en { $runs ->
    [one] { $runs } serie
   *[other] { $runs } series
} de enfriamiento, de { $from } hasta bajar a { $to }.
dish-rests-on-vessels = Se incluye la capacidad calorífica de los recipientes, { $heat } J/K: { $basis }.
dish-rests-on-heating = El factor óptico se basa en { $runs ->
    [one] { $runs } calentamiento
   *[other] { $runs } calentamientos
}, desde { $margin } por encima del aire hasta { $margin } por debajo de la ebullición, hasta donde llegue cada uno.
dish-caption = Agua por encima de la temperatura media del aire desde el inicio de cada serie de enfriamiento; trazo grueso: lo que da su constante de tiempo con aire constante.
dish-alt = Gráfico de líneas de la temperatura del agua por encima del aire frente al tiempo, de { $runs ->
    [one] { $runs } serie
   *[other] { $runs } series
} de enfriamiento, con la curva exponencial. La constante de tiempo media es de { $minutes } minutos.
dish-axis-time = tiempo desde la primera lectura, min
dish-axis-difference = agua por encima del aire, { $unit }
dish-key-water = lecturas
dish-key-told = según la constante de tiempo
dish-source = Mullick, Kandpal y Kumar 1991 (Solar Energy 46, 139–144). Toman la pendiente de ln(T − Ta); este informe toma la de T frente a la integral de T − Ta: lo mismo con aire a temperatura constante, y correcto con aire que se calienta, donde la otra se desvía del 2 al 9 % con 1 K/h y constantes de tiempo de una a dos horas (simulado). Calculan la ebullición a 100 °C; este informe, al punto de ebullición local.
dish-no-cooling-run = no hay ninguna serie de enfriamiento, así que no hay constante de tiempo, ni pérdida, ni factor óptico
dish-no-cooling-run-remedy = deje enfriar una carga caliente a la sombra, y regístrela: kind = "cooling"
dish-begins-too-cool = { $log }: el agua empieza { $above } por encima del aire, y una serie de enfriamiento requiere al menos { $least }; no se usa
dish-begins-too-cool-remedy = empiece cerca de la ebullición
dish-warms = { $log }: el agua llegó a estar { $rise } más caliente que antes, así que le dio el sol, o se añadió agua caliente; no se usa
dish-warms-remedy = aparte la cocina del sol o haga sombra a toda la apertura
dish-cooling-too-short = { $log }: antes de un hueco de más de veinte minutos o de un tramo excluido hay muy pocas lecturas, o una bajada de menos de un quinto de la temperatura inicial por encima del aire; no se usa
dish-cooling-too-short-remedy = lea cada cinco minutos o más a menudo, durante una hora o más
dish-no-loss-area = la superficie de los recipientes está sin indicar, así que la pérdida se da solo en W/K
dish-no-loss-area-remedy = indique loss_area_m2 bajo [cooker]: paredes y tapa de los recipientes
dish-no-vessel-heat = la capacidad calorífica de los recipientes está sin indicar y no se incluye: la pérdida y el factor óptico resultan demasiado bajos en esa parte
dish-no-vessel-heat-remedy = pese los recipientes vacíos: vessel_mass_kg y vessel_material bajo [load]
dish-no-heating = ninguna serie con agua tiene una subida de { $rise } con irradiancia, sin huecos ni tramos excluidos, así que no hay factor óptico
dish-no-heating-remedy = registre un calentamiento de al menos { $rise } al sol, con irradiancia
dish-plane-not-normal = la irradiancia no se midió de cara al sol, y el factor óptico es para la radiación directa
dish-plane-estimated = la irradiancia es estimada, y el factor óptico toma la de la radiación directa
dish-plane-remedy = mantenga el sensor de cara al sol, e indique plane = "normal"
dish-global-not-beam = un sensor de cara al sol ve también el cielo a su alrededor, que un espejo con foco no aprovecha: con él, el factor óptico sale menor que solo con la radiación directa, en torno a una décima parte con cielo muy despejado, y una sexta parte o más con bruma (práctica habitual)
dish-global-not-beam-remedy = diga en las notas si el sensor veía solo la radiación directa
dish-no-end = dentro de la incertidumbre de los instrumentos, el intervalo de una de las cifras no tiene extremo, y no se da
dish-no-end-remedy = mida la irradiancia con un sensor mejor conocido, e indique su incertidumbre
dish-one-day = el enfriamiento o el calentamiento es de un solo día, así que los intervalos no son del 95 %
dish-one-day-remedy = ensaye otros días

## Energy and exergy

section-efficiency = Energía y exergía
efficiency-what = Eficiencia energética: el calor que absorbió el agua entre la energía solar sobre el área de captación. Eficiencia exergética: lo mismo con la exergía, la parte que podría convertirse en trabajo, en la que el agua caliente cuenta más que la tibia. Exergía máxima: el vértice de la parábola de la exergía frente a la diferencia de temperatura; factor de calidad: ese máximo entre la exergía del calor que allí se pierde.
# { $range } in °C.
efficiency-rests-on = Se basan en { counted-intervals } con lecturas fiables, agua de { $range }, { $irradiance } W/m² de media. La capacidad calorífica de los recipientes no se incluye.
efficiency-peak-at = El máximo está { $difference } por encima del aire, con la irradiancia del ensayo ({ $irradiance } W/m² de media).
efficiency-caption = Exergía que gana el agua, intervalo por intervalo.
efficiency-caption-no-peak = Exergía que gana el agua, intervalo por intervalo. No hay ningún máximo entre los intervalos.
efficiency-alt = Diagrama de dispersión de la exergía en vatios frente a la diferencia de temperatura en kelvin, { counted-intervals }.
efficiency-axis-difference = diferencia de temperatura, Td, { $unit }
efficiency-axis-exergy = exergía, W
efficiency-key-intervals = intervalos
efficiency-key-parabola = parábola
efficiency-source = Exergía de la radiación solar según Petela 1964 con el sol a 5777 K; exergía del agua según el segundo principio. Como Öztürk 2004 y otros; los artículos eligen otros rangos de temperatura del agua, así que compare solo con el rango de arriba. Exergía máxima y factor de calidad según Kumar, Vishwanath y Gupta 2012; que la pérdida allí sea la exergía del calor perdido, u·Td·(1 − Ta/T), con la u de este informe, es la interpretación de este proyecto.
efficiency-plane = la irradiancia se midió con un sensor en horizontal: donde el área de captación está orientada al sol, la energía solar se subestima, y las eficiencias salen demasiado altas
efficiency-plane-remedy = compare solo con ensayos cuyo sensor estuviera en horizontal
efficiency-no-peak = la exergía no tiene ningún máximo entre los intervalos, así que no hay exergía máxima ni factor de calidad
efficiency-no-peak-remedy = ensaye desde { $above } por encima del aire hasta cerca de la ebullición
efficiency-no-loss = la pérdida puede ser nula, así que no hay factor de calidad
efficiency-no-loss-remedy = ensaye en un rango más amplio de temperaturas del agua, y en más días
efficiency-one-day = todos los datos son de un solo día, así que los intervalos no son del 95 %
efficiency-one-day-remedy = ensaye otros días

## Where no water heats

tested-method-none = ninguno de la norma: ninguna serie calienta agua
tested-environment-dry = Entorno de los estancamientos
tested-environment-cooling = Entorno de las series de enfriamiento
tested-no-plateau = ningún estancamiento

## On the terminal: the table of report, and what stands below it

# Headers of the table: there is little room.
terminal-campaign = campaña
# As in English
terminal-rating = Ps(50), W (95 %)
# As in English
terminal-r-squared = R²
terminal-used = usados
terminal-days = días
terminal-conformity = conformidad
terminal-report = informe
# Data that nobody measured.
terminal-invented = { $title } (inventado)
# What weakens a rating, each behind its level: "indicative only; horizontal sensor".
terminal-irradiance-not-measured = irradiancia no medida
terminal-horizontal = sensor horizontal
terminal-plane-not-stated = plano del sensor sin indicar
terminal-one-day = un solo día: ± no es del 95 %
terminal-days-not-in-spread = dispersión entre días fuera del ±: no es del 95 %
terminal-extrapolated = extrapolado a 50 K
# Of several campaigns that share a note; { $names }: their names.
terminal-campaigns = { $count } campañas ({ $names })
terminal-more = { $count } más
# In place of the campaigns above, before the first of several notes that are alike.
terminal-alike = { $campaigns }; la primera
terminal-alike-gravest = { $campaigns }; el caso más grave, el de la primera
terminal-alike-times = { $campaigns }, { $count } veces; la primera
# Before a note below the table.
terminal-note = nota
# A note, or what a campaign lacks, behind those that it is about; a cell behind its header.
terminal-whose = { $whose }: { $said }
terminal-left-alone =
    { $all ->
        [1] se deja como está: nada de aquello en que se basa el informe ha cambiado; --fresh lo hace de nuevo
       *[other] { $count } de { $all } campañas se dejan como están: nada de aquello en que se basan sus informes ha cambiado; --fresh los hace todos de nuevo
    }
# A note on a campaign; { $names }: long logs.
terminal-kept-beside = { $names } no está dentro del PDF: entréguelo junto con el informe, o haga el informe con --carry-all
# A note on a campaign; { $count }: how many files, { $names }: the first of them.
terminal-unnamed-logs = { $count ->
    [one] un archivo de su carpeta parece un registro y ninguna serie lo nombra: { $names }
   *[other] { $count } archivos de su carpeta parecen registros y ninguna serie los nombra: { $names }
}

## What check says of the other procedures

# The first line; { $level }: one of those that begin with level-, { $title }: the campaign's.
# As in English
check-verdict = { $level }: { $title }
# { $caveats }: irradiance-estimated and the like.
# As in English
check-verdict-with = { $level } ({ $caveats }): { $title }
# Labels of the lines below it, and what stands beside them.
check-next = siguiente
check-so-far = por ahora
check-aim = objetivo
check-name = campaña
# The first line of several campaigns; { $levels }: "3 × conforms, 2 × cannot be read".
check-many = { $count } campañas: { $levels }
check-unreadable = no se puede leer
# Before what is to be done next in several campaigns; { $first }: the folder of the first of them.
check-campaigns = { $count } campañas
check-campaigns-first = { $first } y { $others } más
check-next-unreadable = corrija los errores indicados abajo
# Of campaigns for whose next steps there is no room.
check-next-other = véase abajo
check-next-reports = escriba los informes: { $command }
# Header of a table.
check-folder = carpeta
# Headings over what is said of several campaigns.
check-many-next = Qué hacer ahora
check-many-findings = Qué impide la conformidad de las campañas y cómo corregirlo
check-many-notes = A indicar junto con los valores
check-many-figures = Los demás valores
check-shown = Se muestran { $shown } de { $count } campañas, primero las que más lejos están de la conformidad.
check-shown-unreadable = Se muestran { $shown } de { $count } campañas: primero las que no se pueden leer ({ $unreadable }), después las que más lejos están de la conformidad.
check-shown-only-unreadable = Se muestran { $shown } de { $count } campañas, todas entre las { $unreadable } que no se pueden leer.
# { $one }: a command, { $whole } and { $json }: options.
check-whole = Una campaña completa: { $one }. Todas: { $whole }, o { $json }
check-rating = Ps(50) = { $rating }, de { $used } de { counted-intervals } en { counted-days }
check-no-number = sin resultado: se pueden usar { $used } de { counted-intervals }
# { $none }: "no rating: there is no interval"; { $power }: "55 ± 12 W (not 95 %)".
check-so-far-balance = { $none }; el balance térmico da { $power } a 700 W/m² y 50 K: indicativo, no un resultado de la norma
check-none-used = sin resultado: { $intervals ->
    [0] no hay ningún intervalo
    [one] el único intervalo no se puede usar
   *[other] no se puede usar ninguno de los { $intervals } intervalos
}
check-not-valid = sin valor: el agua ganaría más calor que la energía solar que incide en la cocina; más intervalos no ayudan
# What to do next. { $command } stays as it is.
check-next-report = escriba el informe: { $command }
# { $remedy }: what to do before more is measured.
check-next-then = { $remedy }; después, { $missing }
# In place of the remedy above, where a notice doubts place or time.
check-next-note = mire primero el aviso sobre el lugar, una fecha o un reloj, y corrija lo que esté mal
# { $next }: what to do; irradiance is estimated, which more of the same does not mend.
check-next-still = { $next } (seguirá siendo indicativo sin un sensor de irradiancia orientado al sol)
# Headers of the tables of runs: there is little room.
check-run = serie
check-date = fecha
check-readings = lecturas
check-intervals = intervalos
check-used = usados
check-aside = descartados
check-kind = tipo
check-from = de
check-to = a
# In the last column of the table, behind a number of intervals: two words at most.
aside-water-below-window = agua fría
aside-water-above-window = casi hirviendo
aside-ambient-out-of-range = aire
aside-irradiance-low = sol débil
aside-irradiance-high = sol fuerte
aside-irradiance-unsteady = sol inestable
aside-wind-high = viento
aside-outside-solar-window = hora
aside-reading-gap = huecos
aside-excluded-by-tester = excluidos
aside-not-cloudless = cielo
# Headings.
check-findings = Deficiencias y cómo corregirlas
check-notes = A indicar junto con el valor
check-set-aside = Intervalos descartados y qué ayuda
check-notices = Avisos
check-how-read = Cómo se leyeron los registros
check-shared = da { $keys }
check-shared-nothing = no da nada: archivos más cercanos indican las mismas claves
# Below the table. { $run }: its name, { $shortest }, { $longest }: minutes.
check-hole = { $run }: ningún intervalo de { $from } a { $to } el { $date }: allí no hay dos lecturas del agua separadas de { $shortest } a { $longest } minutos
check-not-normalised = { $run }: { counted-intervals } sin irradiancia, que cumplen todos los límites y no se usan
# What helps where intervals are set aside: what the person beside the cooker can do.
helps-water-below-window = empiece con el agua unos grados por encima del ambiente, o deje que se caliente antes de que cuente
helps-water-above-window = termine la serie, o empiece de nuevo con agua fría, cuando el agua se acerque a la ebullición
helps-ambient-out-of-range = elija otra estación del año u otra hora del día
helps-irradiance-low = espere cielo despejado y mantenga limpio el vidrio del sensor
helps-irradiance-high = compruebe la calibración del sensor y evite que le llegue luz reflejada
helps-irradiance-unsteady = ensaye en días sin paso de nubes y mantenga orientado el sensor
# In place of the three above where a model of the clear sky gives irradiance, and no sensor.
helps-irradiance-of-model = compruebe latitud, longitud y zona horaria, con las que se estima el sol, y ensaye más cerca del mediodía solar
helps-wind-high = ensaye en un lugar resguardado o en días más tranquilos
helps-outside-solar-window = caliente dentro de la ventana, que está en hora solar
helps-reading-gap = registre cada magnitud al menos una vez en cada intervalo
helps-excluded-by-tester = nada, salvo que la exclusión fuera un error
helps-not-cloudless = anote en cada lectura si el cielo estaba sin nubes; mida la irradiancia donde pasen nubes
# Behind helps-outside-solar-window.
helps-by-clock = { $helps }; el { $date } fue de { $from } a { $to } según el reloj
# Of several logs, { $what }: what is said of each of them.
check-of-logs = { $count } registros
check-figures = Otras cifras hasta ahora
check-no-figures = Todavía ninguna otra cifra.
box-grade-one-day = ninguno: F1 está por encima de { $limit } K m²/W (IS 13429), pero es de un solo día, y otro día puede dar menos
box-grade-not-flat = ninguno: la irradiancia no se midió con un sensor en horizontal, para el que vale el límite, { $limit } K m²/W (IS 13429)
box-glass = El vidrio es de { $area }, según lo indicado.
box-glass-not-stated = El área de captación, { $area }, se toma como la del vidrio. Si incluye espejos, F2 resulta demasiado baja: indique el área del vidrio.
box-beyond-reach-remedy = F1 es demasiado baja, o el sensor dio un valor demasiado bajo en esa serie: compruebe que se llegó al estancamiento, que los espejos estaban igual de cubiertos y que el sensor estaba en horizontal
boiling-gets-to = sin tiempo hasta hervir: con la irradiancia del ensayo el agua llega a { $highest }, y hierve a { $boiling }
boiling-may-not = sin tiempo hasta hervir: dentro de la incertidumbre de las cifras, puede que el agua no llegue a { $boiling }, donde hierve
boiling-remedy = ensaye con mayor irradiancia, o mejore la cocina
dish-runs-left-out = series con agua sin una subida de { $rise } al sol y sin huecos ni tramos excluidos, no usadas: { $runs }
dry-no-ambient = el aire no se leyó a menos de dos horas de los tramos constantes
dry-no-ambient-remedy = lea el aire al menos una de cada dos veces
dry-may-get-hotter = en su estancamiento el recipiente aún subía { $rate } K/min: según su subida inicial puede acabar { $more } más caliente
dry-no-end = la diferencia por W/m² no se da: dentro de la incertidumbre de la irradiancia, su intervalo no tiene extremo
efficiency-peak-unsure = la exergía máxima no se da: no la hay si se omite uno de los días, o dentro de la incertidumbre de los instrumentos
efficiency-peak-unsure-remedy = ensaye más días, cada uno desde { $above } por encima del aire hasta cerca de la ebullición
efficiency-too-much = el agua absorbió más calor que la energía solar sobre el área de captación, lo que no puede ser
efficiency-too-much-remedy = compruebe el área de captación, la carga y las unidades
tested-instruments-note-cooling = Incertidumbres estándar (k = 1); de una clase, sus límites. Donde no se indica ninguna de las dos, se supone la clase más desfavorable (práctica habitual).

## Comparison: figures beside the rating

section-beside = Cifras aparte del resultado
# A list of several campaigns for each figure: headers, and cells. Numbers are those of campaigns.
beside-head-value = valor
beside-head-apart = se distingue de
beside-from-none = ninguna
beside-from-so-many = { $apart } de { $compared }
# { $reasons }: some of beside-not-compared-why, with ";" between them.
beside-not-compared-list = No se comparan: { $reasons }.
# { $pairs }: some of beside-not-compared-with, with ";" between them.
# As in English
beside-not-compared-why = { $pairs } ({ $why })
# Numbers of campaigns.
beside-not-compared-with = { $one } con { $others }
beside-pairs = { $count ->
        [one] { $count } par
       *[other] { $count } pares
    }
# { $numbers }: "2, 5–7".
beside-list-note = Cada ± es del 95 %, salvo donde dice «{ beside-one-day }». Lo que las campañas tienen en común se anula en una diferencia, así que dos cifras cuyos intervalos se solapan aún pueden diferir. Las cifras de las que no se compara ningún par están en el archivo de datos.
beside-first-only = De cada cifra se muestran las primeras { $shown }, de { $campaigns } campañas en total; todos los pares están en el archivo de datos.
# A title where there is no rating.
beside-title = Comparación de las cifras de { $count } campañas
beside-title-none = Ninguna cifra de estas { $count } campañas se puede comparar
# { $name }: the campaign with which all others were to be compared.
beside-title-none-of = Ninguna cifra de { $name } se puede comparar con la de otra campaña
beside-title-hotter = En vacío, { $first } se calienta más que { $second }
beside-title-not-told = No se puede saber cuál se calienta más en vacío, { $first } o { $second }
beside-in-all = Se distinguen { $apart } de { $compared } diferencias de cifras.
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
beside-one-day = no 95 %
beside-indicative = indicativo
beside-vessels-not-stated = recipientes sin indicar
figure-unlike-vessels = otros recipientes
figure-unlike-plane = irradiancia en otro plano
figure-unlike-plane-not-stated = plano de la irradiancia sin indicar
figure-unlike-load-or-sun = otra carga, irradiancia o temperatura del aire
figure-unlike-load = otra carga
figure-unlike-span = otro rango de temperaturas del agua
figure-unlike-vessel-heat = el calor de los recipientes cuenta solo en una
figure-unlike-no-budget = no se sabe de qué se compone su ±
beside-note = Cada ± es del 95 %, salvo donde dice «{ beside-one-day }». Lo que ambas campañas tienen en común se anula en la diferencia, así que dos cifras cuyos intervalos se solapan aún pueden diferir.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = El recipiente vacío de { $second } se calienta más por W/m² que el de { $first }: { $difference } K m²/W más ({ $interval }), un { $share } %: una diferencia real.
beside-cooler = El recipiente vacío de { $second } se calienta menos por W/m² que el de { $first }: { $difference } K m²/W menos ({ $interval }), un { $share } %: una diferencia real.
beside-hotter-one-day = El recipiente vacío de { $second } se calentó más por W/m² que el de { $first } al ensayarse: { $difference } K m²/W más ({ $interval }), un { $share } %. No se ensayaron en varios días cada uno, de modo que los días por sí solos pueden explicarlo: ensaye ambos de nuevo en otros días.
beside-cooler-one-day = El recipiente vacío de { $second } se calentó menos por W/m² que el de { $first } al ensayarse: { $difference } K m²/W menos ({ $interval }), un { $share } %. No se ensayaron en varios días cada uno, de modo que los días por sí solos pueden explicarlo: ensaye ambos de nuevo en otros días.
beside-hotter-by-chance = Qué recipiente vacío se calienta más por W/m², el de { $second } o el de { $first }, no queda demostrado: difieren en { $difference } K m²/W ({ $interval }), un { $share } %, pero entre { $pairs } pares uno puede diferir tanto por azar.
beside-hotter-not-told = No se puede saber qué recipiente vacío se calienta más por W/m², el de { $second } o el de { $first }: { $second } tiene { $difference } K m²/W más, un { $share } %, y cualquier valor de { $interval } es compatible con los datos.
beside-cooler-not-told = No se puede saber qué recipiente vacío se calienta más por W/m², el de { $second } o el de { $first }: { $second } tiene { $difference } K m²/W menos, un { $share } %, y cualquier valor de { $interval } es compatible con los datos.
beside-hotter-not-compared = No se compara cuánto se calientan los recipientes vacíos de { $second } y { $first }: { $why }.
beside-nothing-shared = { $second } y { $first } no tienen ninguna cifra en común.
beside-others = Otras cifras de { $second } y { $first } que se pueden comparar: { $compared }; de estas, se distinguen: { $apart }.
comparison-dry-title = Recipientes vacíos
comparison-dry-note = Estancamiento: donde el recipiente ya no se calentó más. K m²/W: recipiente por encima del aire, por W/m², ± del 95 %.
comparison-dry-caption = Temperatura del recipiente vacío en °C frente a los minutos desde el inicio de una serie, en negro la de la campaña nombrada sobre el panel; trazo grueso: el estancamiento. No tuvieron la misma irradiancia: compare K m²/W, no grados.
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = Temperatura del recipiente vacío frente al tiempo, máxima { $highest }.
comparison-practice-no-rating = JCGM 100:2008 para las diferencias
beside-note-difference = La incertidumbre de una diferencia de cifras aparte del resultado contiene la dispersión y los días de ambas campañas, cada una con sus propios grados de libertad, y lo que sus instrumentos no comparten. El efecto de un mismo día en ambas no se descuenta, lo que la aumenta. El resultado tiene su propia comparación; también la ganancia y la pérdida, donde ambas campañas tienen resultado y balance térmico.
beside-note-alike = Las cifras se comparan donde los archivos de campaña indican condiciones semejantes: por W/m², la irradiancia en un mismo plano; de recipientes vacíos o que se enfrían, el mismo número de recipientes, con la misma capacidad calorífica y la misma superficie dentro de un 2 %; tiempos hasta hervir, eficiencias y exergía máxima, la irradiancia dentro de un 2 % y el ambiente dentro de 2 K; tiempos hasta hervir, la carga dentro de un 2 % y el punto de ebullición dentro de 2 K; eficiencias, un rango de temperaturas del agua dentro de 5 K en sus extremos y de 2 K de media; F2, la carga por m² dentro de un 10 %; constante de tiempo, la carga dentro de un 2 %. Estos límites son práctica habitual. «Recipientes sin indicar»: no se sabe si eran semejantes.
beside-note-pairs = «Se distinguen»: el valor p de la diferencia es menor que 0,05, corregido por el método de Holm por los pares en que se compara la cifra, de { $pairs } en total; no está corregido por el número de cifras. De una diferencia entre días sueltos nunca se dice que se distinguen.

## Slips that show

dry-sun-down = en el estancamiento el sol estaba bajo el horizonte: el reloj, la zona horaria o el lugar están mal
dry-sun-down-remedy = corrija time_zone, latitud y longitud en [site], o las horas del registro
dry-colder-than-air = el recipiente marca { $below } por debajo del aire más fresco de la serie: uno de los dos está en otra unidad que la indicada
dry-very-hot = el recipiente marca { $highest }, más de lo que alcanzan las cocinas de construcción casera (práctica habitual, sin fuente publicada): ¿está el termómetro en °F?
dry-unit-remedy = indique vessel_temperature y ambient_temperature en [units], "°F" o "°C", como muestra cada termómetro
dish-losses-differ = la pérdida por enfriamiento, { $cooling } W/K, y la del balance térmico, { $balance } W/K, difieren en más que sus ±: el sol llegó a la carga que se enfriaba, o el viento era otro
dish-losses-differ-remedy = haga sombra a toda la apertura y a la olla mientras se enfría, y anote el viento en ambas series
box-plane-turned = las lecturas del sensor horizontal se convirtieron al plano orientado al sol, una estimación; F1 y F2 se definen para ellas sin convertir
box-plane-turned-remedy = haga una segunda campaña con los mismos registros, sin estimate y con plane = "horizontal"
notice-long-run-other = { $log }: las lecturas abarcan { $days } días, y una serie es de un solo día; compruebe las fechas, o fije start y end
finding-no-water = ninguna serie de esta campaña calienta agua, así que no hay nada que evaluar
finding-no-water-remedy = caliente una carga de agua de masa conocida para obtener un resultado; las demás cifras valen por sí mismas
instrument-assumed = sin indicar; se supone { $class }: { $basis }

## A test day while it runs, on the terminal

# The first line: how it stands. It is read in the sun, so it is short.
watch-waiting = A la espera de la primera fila de hoy
watch-silent = Sin filas desde hace { $time }
watch-over = La ventana solar de hoy se ha cerrado
# { $kind }: what is tested, a message that begins with kind-.
watch-other-run = Se está midiendo: { $kind }
watch-begins = Empieza un intervalo
watch-no-run = Llegan filas, pero no son de ninguna serie
# { $passed }, { $length }: minutes.
watch-good = Bien por ahora: { $passed } de { $length } min de este intervalo
# { $faults }: one of the next two or several, or a message that begins with reason-.
watch-at-risk = En riesgo: { $faults }
watch-spoiled = Este intervalo ya no sirve: { $faults }
# { $what }: what is limited, a message that begins with limit-; then numbers with their unit.
watch-at-least = { $what } { $found }, al menos { $limit }
watch-at-most = { $what } { $found }, como máximo { $limit }
# Behind check-next: what to do.
watch-next-start = oriente la cocina y ponga en marcha el registrador
watch-next-logger = revise el registrador: alimentación, cable, memoria
watch-next-tomorrow = termine por hoy
watch-next-aim = oriente ahora
watch-next-no-run = compruebe que el agua se calienta, y revise start y end en campaign.toml
watch-next-keep = déjela como está
watch-next-enough = ya basta: puede terminar después de este intervalo
watch-next-cool-water = tenga lista agua fría: el próximo intervalo se calentará demasiado
# { $remedy }: a message that begins with helps-.
watch-next-spoiled = { $remedy }; el próximo intervalo empieza a las { $clock }
# Labels, and what stands beside them.
watch-vessel = recipiente
watch-above = { $difference } sobre el aire (Td)
watch-air = aire { $air }
watch-irradiance = { $irradiance } W/m²
# { $turned }: as it counts, { $irradiance }: as the sensor that lies flat has it.
watch-irradiance-turned = { $turned } W/m² de cara al sol, lo que se usa (sensor en horizontal: { $irradiance })
watch-wind = viento { $wind }
watch-spoils = lo estropea
watch-spoils-irradiance = irradiancia por debajo de { $low } o por encima de { $high } W/m²
watch-spoils-wind = viento medio por encima de { $most } (por ahora { $mean })
watch-spoils-water = agua por encima de { $most }
watch-today = hoy
# In place of today, where the newest row is of another day; what stands beside it.
watch-last-day = último día
# { $gained }: the next one.
watch-gained-on = { $date }: { $gained }
# { $all }: intervals of today, used or not.
watch-gained = { $used } de { $all ->
    [one] { $all } intervalo usado
   *[other] { $all } intervalos usados
}
watch-missing = aún faltan: { $missing }
watch-missing-nothing = ya hay suficientes
watch-aim = reorientar
watch-aim-not-stated = sin horas: falta acceptance_half_angle_deg en campaign.toml. Práctica habitual, sin fuente publicada: un reflector poco profundo, cada 45 min más o menos; un disco de foco estrecho, cada 10 a 15
watch-aim-always = todo el tiempo, con un motor
watch-aim-due = ahora ({ $clock })
watch-aim-done = hoy ya no
watch-at-in = a las { $clock }, en { $time }
watch-opens = se abre a las { $clock }, en { $time }
watch-closes = se cierra a las { $clock }, en { $time }
watch-closed = se cerró a las { $clock }
# { $said }: what check says; { $level }: one of those that begin with level-.
watch-so-far = { $level }: { $said } (filas hasta las { $clock })
watch-so-far-no-row = { $level }: { $said }
watch-time = hora
watch-time-text = { $now }; última fila { $row }
watch-seconds = { $seconds } s
# From two days on.
watch-days = { $days } días
# What is not as it should be. { $what }: an error, in English.
watch-log-missing = { $log } aún no está
watch-log-gone = { $log } ya no está; se muestra lo que contenía antes
watch-not-read = no se puede usar ahora: { $what }
watch-campaign-not-read = el archivo de la campaña no se puede usar ahora, vale el último bueno: { $what }
watch-line-not-ended = { $log }: su última línea está incompleta y aún no se usa
watch-begun-anew = { $log } se empezó de nuevo: solo se usa lo que contiene ahora
watch-none-later = llegaron líneas sin ninguna lectura posterior a las { $clock }: ¿se atrasó el reloj del registrador?
watch-clock-jumped = el reloj de las filas saltó { $time }
watch-clocks-apart = el reloj de las filas y el de este equipo difieren en { $time }
watch-caution = Nunca mire hacia el foco ni al sol. El metal caliente y el vapor queman: guantes. Aparte la cocina del sol antes de meter la mano. Las normas locales y la práctica de los profesionales habilitados prevalecen.
watch-caution-dry = Un recipiente vacío supera con mucho los 100 °C y quema al tocarlo. Nunca eche agua en él mientras está caliente. Nunca mire hacia el foco ni al sol; aparte la cocina de él antes de meter la mano. Las normas locales y la práctica de los profesionales habilitados prevalecen.
