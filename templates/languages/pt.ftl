# Português do Brasil.
#
# Glossary: cooking power "potência de cozimento", standardised "padronizada", intercept area
# "área de captação", run "série", log "registro", set aside "descartado", shortcoming
# "deficiência", deviation "desvio", rating "resultado", line "reta", slope "coeficiente angular",
# intercept "coeficiente linear", scatter "dispersão", budget "balanço de incerteza", cooker
# "fogão", pot "panela", vessel "recipiente", section "seção", file "arquivo", tester "operador",
# the standard "a norma", draws "simulações", band "banda", range "faixa".

## Numbers, dates, lists

decimal-mark = ,
ends-of-range = { $low } a { $high }
list = { $first } e { $last }
# Between two clauses of a sentence.
clause-break = { "; " }
date = { $day } de { $month } de { $year }
month-1 = janeiro
month-2 = fevereiro
month-3 = março
month-4 = abril
month-5 = maio
month-6 = junho
month-7 = julho
month-8 = agosto
month-9 = setembro
month-10 = outubro
month-11 = novembro
month-12 = dezembro

## What is attached to a report, one line each

attached-campaign = Arquivo da campanha: o que foi ensaiado, onde e com quê
attached-shared = Chaves que várias campanhas compartilham
attached-log = Registro, byte por byte, tal como foi lido
attached-photo = Foto do fogão, tal como está no relatório
attached-rating = Todos os resultados como dados, com a precisão completa
attached-intervals = Uma linha por intervalo, usados e descartados
attached-comparison = Comparação como dados, com a precisão completa
attached-pairs = Uma linha por par de campanhas
attached-plan = Plano do dia como dados
checkable = Os dados estão dentro deste PDF. Qualquer pessoa pode verificá-lo: “simmerline verify ARQUIVO”, versão { $version }, o compõe de novo a partir deles e diz se é o arquivo emitido.
checkable-from = Os dados estão dentro deste PDF. Qualquer pessoa pode verificá-lo: “simmerline verify ARQUIVO”, versão { $version } (de { $address }), o compõe de novo a partir deles e diz se é o arquivo emitido.
checkable-beside = { $said } Os registros de mais de { $limit } MB não estão dentro: guarde-os junto com ele, pois a verificação precisa deles.
checkable-not = Este PDF não contém dados, portanto não pode ser verificado por si só. Ele traz impresso o SHA-256 de cada arquivo de entrada.
# On the web page.
page-not-checkable = Esta página web não contém dados: só o PDF deste relatório pode ser verificado.

# The rating: page one, conditions, runs, intervals, the line, tests of the dry vessel.
#
# Standardised cooking power is "Ps", the temperature difference between water and ambient
# "Td", the rating "Ps(50)": symbols stay as they are in every language.

## Counts, each within several of the sentences below
#
# Sentences around them are built so that no verb or adjective has to agree with the number.

counted-intervals = { $intervals ->
    [one] { $intervals } intervalo
   *[other] { $intervals } intervalos
}
counted-used = { $intervals ->
    [one] { $intervals } intervalo usado
   *[other] { $intervals } intervalos usados
}
counted-days = { $days ->
    [one] { $days } dia
   *[other] { $days } dias
}
# Of the line: points less two.
counted-freedom = { $freedom ->
    [one] { $freedom } grau de liberdade
   *[other] { $freedom } graus de liberdade
}

## Every page

report-kind = Relatório de ensaio de fogão solar
report-kind-indicative = Relatório de ensaio de fogão solar: indicativo
report-kind-not-valid = Relatório de ensaio de fogão solar: não válido
report-kind-no-rating = Relatório de ensaio de fogão solar: sem resultado
report-kind-estimated = Relatório de ensaio de fogão solar: indicativo, irradiância estimada
# { $title } is the tester's own.
report-title-indicative = { $title } (indicativo)
report-title-not-valid = { $title } (não válido)
report-title-no-rating = { $title } (sem resultado)
report-title-estimated = { $title } (indicativo, irradiância estimada)
report-invented = Dados inventados, para demonstração
report-statement = Os resultados referem-se apenas ao fogão tal como foi ensaiado. Reprodução permitida somente na íntegra.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = irradiância estimada
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Relatório [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = página [page] de [pages]
letterhead-client = para { $client }
letterhead-client-contact = para { $client }, { $contact }
letterhead-number = Relatório { $number }
letterhead-issued = emitido em { $date }
sign-tested = Ensaiado por
sign-authorised = Autorizado por
sign-date = Data e assinatura
letterhead-hashes = Início do SHA-256 dos arquivos de entrada: { $hashes } (completo: seção { $section }).
letterhead-hashes-more = Início do SHA-256 dos arquivos de entrada: { $hashes } e mais { $more } (completo: seção { $section }).

## Page one: how far the rating conforms

level-conforms = Conforme
level-conforms-with-notes = Conforme com notas
level-indicative = Apenas indicativo
level-not-valid = Não válido
level-no-rating = Sem resultado
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = Segundo a ASAE { $procedure }; limites na seção { $section }.
headline-conforms-with-notes = Segundo a ASAE { $procedure }; limites na seção { $section }; as notas estão abaixo.
# Abaixo de qualquer das duas: em que se baseiam.
headline-conforms-rests-on = Não verificados por ninguém: os limites, transcritos de memória da norma, e a posição dos sensores, que é declaração do operador.
headline-indicative = Não cumpre a ASAE { $procedure }: veja as deficiências abaixo
headline-indicative-missing = Não cumpre a ASAE { $procedure }; ainda falta: { $missing }
headline-indicative-missing-too = Não cumpre a ASAE { $procedure }: veja as deficiências. Também falta: { $missing }
headline-not-valid = Segundo estas leituras, a água ganharia mais calor que a energia solar que incide no fogão. Verifique a área de captação, a carga e as unidades.
# { $power }: "55 ± 12 W (not 95 %)".
headline-no-rating-balance = O balanço térmico dá { $power } a 700 W/m² e 50 K: indicativo, não um resultado da norma (seção { $section }).
headline-no-rating-missing = Sem resultado segundo a ASAE { $procedure }; ainda falta: { $missing }
headline-without-rating = Sem resultado segundo a ASAE { $procedure }: veja as deficiências abaixo
headline-counts = { counted-used } (mín. { $least_intervals }) · { counted-days } ({ $least_days }) · R² { $r_squared } ({ $least_r_squared })
headline-counts-no-line = { counted-used } (mín. { $least_intervals }) · { counted-days } ({ $least_days })
# What is still missing.
missing-intervals = { $intervals ->
    [one] mais { $intervals } intervalo
   *[other] mais { $intervals } intervalos
}
missing-days = { $days ->
    [one] mais { $days } dia
   *[other] mais { $days } dias
}
missing-intervals-and-days = { missing-intervals } e { missing-days }

## Page one: the number

headline-label = Potência de cozimento padronizada Ps(50)
# Beside the number and its ±; 95 % is the level of confidence.
# As in English
headline-unit = W (95 %)
headline-unit-one-day = W (não 95 %)
headline-what-it-is = Potência no ensaio, escalada para 700 W/m² como define a ASAE { $procedure }, com a água { $difference } acima do ar
page-no-rating = sem resultado
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = irradiância estimada { $way }
headline-horizontal = irradiância medida na horizontal, não de frente para o sol
headline-plane-not-stated = plano do sensor de irradiância sem indicação
headline-one-day = ensaiado em um só dia: a variação entre dias não está no ±
headline-days-not-in-spread = nenhum dia pode ser omitido do ajuste: a variação entre dias não está no ±
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-extrapolated = uma extrapolação: 50 K está fora do que foi observado
headline-interval = intervalo de 95 %: { $low } a { $high } W
headline-interval-one-day = intervalo sem a variação entre dias, não de 95 %: { $low } a { $high } W
fact-delivers = Fornece
fact-took-up = { $power } ± { $half_width } W à água { $difference } acima do ar, com os { $irradiance } W/m² do ensaio
fact-took-up-estimated = { $power } ± { $half_width } W à água { $difference } acima do ar, com irradiância estimada em { $irradiance } W/m²
fact-lost = nenhum calor: a água { $difference } acima do ar perdia { $power } ± { $half_width } W com os { $irradiance } W/m² do ensaio
fact-scaled = com 700 W/m², { $power } ± { $half_width } W pelo balanço térmico, que escala o ganho e não a perda (seção { $section })
fact-scaled-loses = perda de { $power } ± { $half_width } W com 700 W/m² pelo balanço térmico (seção { $section })
fact-good = Desempenho
fact-per-area = { $power } ± { $half_width } W por m² de área de captação, { $percent } % de 700 W/m². Publicado sobre outros fogões, por outros métodos, só como ordem de grandeza: { $range } W/m² (veja “{ summary-title }”).
fact-kitchen = Na cozinha
fact-heats = { $amount } de água { $journey } em cerca de { $time } ({ $range }), com { $irradiance } W/m²
fact-may-not-heat = a água talvez não aqueça { $journey } com { $irradiance } W/m²
fact-does-not-heat = a água não aquece { $journey } com { $irradiance } W/m²
fact-dry = Recipiente vazio
fact-sure = Incerteza
fact-parts = Os instrumentos são { $instruments } % do seu quadrado (seção { $section }).
fact-parts-assumed = Os instrumentos, alguns supostos, são { $instruments } % do seu quadrado (seção { $section }).

## Page one: the rating in plain words

# As in English
headline-two-kilograms = 2 kg
headline-heat-ends = o calor útil termina perto de { $end } ({ $range })
headline-heat-ends-or-boils = o calor útil termina perto de { $end } ({ $range }, onde a água ferve)
headline-boils-first = ainda aquece na ebulição
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = de { $degrees }
journey-degrees = { $start } a { $target }
journey-to-boiling = de { $start } até ferver ({ $boiling } aqui)
# { $result } as in stagnation-result.
headline-dry = O recipiente seco chegou a { $difference } acima do ar com { $irradiance } W/m²: { $result } (seção { $section }).

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
# As in English
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
# As in English
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation }; R² = { $r_squared }; { counted-used } em { counted-days }, Td de { $lowest } a { $highest } K
# R² of points that all have the same power.
undefined = indefinido
figure-title-falling = A potência de cozimento padronizada diminui quando a água aquece: { $equation }, R² { $r_squared }
figure-title-falling-estimated = A potência de cozimento padronizada com irradiância estimada diminui quando a água aquece: { $equation }, R² { $r_squared }
figure-title-rising = A potência de cozimento padronizada não diminui quando a água aquece: { $equation }, R² { $r_squared }
figure-title-rising-estimated = A potência de cozimento padronizada com irradiância estimada não diminui quando a água aquece: { $equation }, R² { $r_squared }
figure-title-no-line = Não se pode ajustar uma reta
figure-title-not-valid = Potência de cozimento padronizada segundo as leituras; não válida, por isso sem reta
# In the figure of page one, beside what they name.
# As in English
figure-used = { counted-used }
figure-aside = descartados: { $count }
figure-aside-most = principal motivo: { $reason } ({ $count })
# Where another reason is as frequent.
figure-aside-among = entre eles: { $reason } ({ $count })
figure-band-dark = escuro: dispersão e dias
figure-band-light = claro: com os instrumentos (95 %)
# Where no other day tells how days differ.
figure-band-dark-one-day = escuro: dispersão, sem os dias
figure-band-light-one-day = claro: com os instrumentos; não é 95 %
# Read out to those who do not see the figure.
power-line-caption = { $facts }.
power-line-alt = Gráfico de pontos da potência de cozimento padronizada, em watts, em função da diferença de temperatura entre a água e o ambiente, em kelvins. { $facts }; descartados: { $aside }. A reta indica { $power } watts a 50 kelvins.
power-line-estimated = Irradiância estimada: { $text }
no-line-facts = { counted-used }, descartados: { $aside }; não se pode ajustar uma reta
not-valid-facts = { counted-used }, descartados: { $aside }; não válida, por isso sem reta
no-line-alt = Gráfico de pontos da potência de cozimento padronizada em função da diferença de temperatura: { $facts }.
page-findings = Deficiências, e como corrigi-las
# Below those that page one has room for.
page-findings-next = Todas as deficiências, e como corrigi-las, estão na página seguinte.
# Where the rating conforms with notes.
page-findings-notes = Notas, e o que as eliminaria
conditions-title = Condições: permitido (sombreado), observado nos intervalos usados (barra e números), intervalos descartados (à direita)
conditions-track = { $name }: { $observed }; descartados: { $count }
brief-irradiance = Irradiância
brief-irradiance-change = Variação da irradiância no intervalo
brief-wind = Vento médio e vento mantido
brief-ambient = Temperatura ambiente média
brief-water-above = Água acima do ambiente, início e fim
brief-water-below = Água abaixo da ebulição, início e fim
# { $what }: one of the next or of those above, of irradiance.
brief-estimated = { $what }, estimada
brief-water-lowest = Temperatura mais baixa da água
brief-water-highest = Temperatura mais alta da água
brief-solar-time = Hora solar
page-before-you-cook = Antes de cozinhar.
headline-caution = As superfícies quentes e o vapor queimam, o foco pode cegar e provocar incêndios, e este resultado nada diz sobre a segurança dos alimentos. Leia os avisos de segurança na seção { $section } antes de cozinhar. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.
headline-caution-no-rating = As superfícies quentes e o vapor queimam, o foco pode cegar e provocar incêndios, e estes números nada dizem sobre a segurança dos alimentos. Leia os avisos de segurança na seção { $section } antes de cozinhar. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.
# What others measured, on page two, to hold a rating against.
yardstick-own = Ps(50) por m² de área de captação: { $power } ± { $half_width } W/m², { $percent } % de 700 W/m².
yardstick-parabolic = Publicado, conhecido só por resumos: um fogão parabólico, { $value } W/m² (eficiência energética de 2,8 a 15,7 % tomada de 700 W/m²; { $source });
yardstick-box = um fogão de caixa, { $value } W/m² (27 W de 0,408 m² com 750 W/m² ou mais; { $source }).
yardstick-caution = Nenhum dos dois foi avaliado pela ASAE S580.1: mostram a ordem de grandeza e não avaliam nada.

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = usados: { counted-intervals }; a norma exige { $least }
finding-too-few-intervals-own = usados: { counted-intervals }; o limite próprio da campanha pede { $least }
finding-too-few-intervals-remedy = { missing-intervals } que possam ser usados
finding-too-few-days = intervalos usados em { counted-days }; a norma exige { $least }
finding-too-few-days-own = intervalos usados em { counted-days }; o limite próprio da campanha pede { $least }
finding-too-few-days-remedy = ensaio em { missing-days }
finding-no-rating = não se pode ajustar uma reta: são necessários três intervalos usados com irradiância, com diferenças de temperatura distintas
finding-no-rating-remedy = mais intervalos que possam ser usados, do ambiente até perto da ebulição
# { $shortest }, { $longest }: "9", "11".
finding-no-rating-remedy-intervals = leia a água a cada { $shortest } a { $longest } minutos, ou a cada um, dois ou cinco, até perto da fervura
finding-no-rating-remedy-irradiance = meça a irradiância; sem ela a potência não pode ser normalizada
finding-r-squared-low = R² é { $r_squared }, abaixo de { $least }; a norma pede apenas uma nota; este relatório não declara a conformidade
finding-r-squared-low-own = R² é { $r_squared }, abaixo do limite próprio da campanha de { $least }
finding-r-squared-low-remedy = orientação mais constante, céu mais limpo e menos vento; um sensor que não toque na panela
finding-r-squared-low-remedy-resolution = um termômetro da água mais fino: a sua resolução é a maior parte da dispersão
# De uma reta a que os seus pontos se ajustam bem.
finding-r-squared-low-remedy-flat = R² é baixo porque a potência quase não diminui com a temperatura, não por causa da dispersão; julgue o número pelo seu ±; uma faixa mais larga de temperatura da água eleva R²
finding-line-not-falling = a potência não diminui quando a água aquece, embora água mais quente perca mais calor
finding-line-not-falling-remedy = verifique se a temperatura da água é mesmo a da água, e abranja uma faixa maior de temperaturas
finding-no-useful-heat = a reta indica { $power } W a { $difference }: ali a água perde calor
finding-no-useful-heat-remedy = verifique se as leituras são de água sendo aquecida, com o fogão orientado para o sol
finding-extrapolated = { $difference } está fora das diferenças de temperatura observadas, de { $observed }
finding-extrapolated-remedy = intervalos usados dos dois lados de { $difference }
# { $runs }: a list of finding-load-off-run.
finding-load-off = a carga difere em mais de { $tolerance } % de { $load } em { $runs }
# As in English
finding-load-off-run = { $run } ({ $load })
finding-load-off-remedy = pese { $load } de água por m² de área de captação, ou corrija essa área
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = o vento não foi medido em { $runs }
finding-wind-not-measured-remedy = meça o vento ao lado do fogão, à altura dele
finding-wind-estimated = o vento foi estimado a olho em { $runs }, com a exatidão de um grau da escala de Beaufort
finding-irradiance-estimated = a irradiância não foi medida junto ao fogão no plano normal à radiação direta, mas estimada { $way }
finding-irradiance-estimated-remedy = meça a irradiância ao lado do fogão, com um sensor virado para o sol
finding-irradiance-missing = a irradiância não foi medida em { $runs }, cujos intervalos não podem ser normalizados e não estão na reta
finding-irradiance-missing-remedy = meça a irradiância no plano normal à radiação direta
finding-irradiance-horizontal = a irradiância foi medida no plano horizontal; a norma exige o plano normal à radiação direta, em que ela é em geral mais alta, por isso o resultado é provavelmente alto demais
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = monte o sensor voltado para o sol, como o fogão; até lá, faça converter as leituras para o plano voltado para o sol, uma estimativa que o arquivo da campanha pode pedir
finding-irradiance-plane-not-stated = o plano do sensor de irradiância não está indicado; a norma exige o plano normal à radiação direta, que é o suposto
# plane = "normal" e [instruments.irradiance] são partes do arquivo da campanha e ficam como estão.
finding-irradiance-plane-not-stated-remedy = indique em [instruments.irradiance] como o sensor estava montado: plane = "normal" se estava virado para o sol, plane = "horizontal" se estava na horizontal
finding-impossible-gain = em { counted-used }, a água ganhou mais calor que a energia solar interceptada; no primeiro, recebeu { $power } W de { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-gain-estimated = em { counted-used }, a água ganhou mais calor que a energia solar interceptada, além da incerteza da irradiância estimada (± { $percent } %); no primeiro, recebeu { $power } W de { $sunlight } W
finding-impossible-gain-remedy = verifique a massa de água, a área de captação e as unidades de temperatura e de irradiância
finding-impossible-rating = o resultado de { $power } W é maior que a energia solar que incide na área de captação a { $irradiance } W/m², { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-rating-estimated = o resultado de { $power } W é maior que a energia solar que incide na área de captação a { $irradiance } W/m², { $sunlight } W, além da incerteza da irradiância estimada (± { $percent } %)
finding-impossible-rating-remedy = verifique as unidades de temperatura, a área de captação e a carga de água
finding-gain-beyond = em { counted-used }, a água ganhou mais calor do que a irradiância explica; no primeiro, recebeu { $power } W de { $sunlight } W
finding-gain-beyond-remedy = verifique a massa de água, a área de captação e as unidades, e meça a irradiância com um sensor voltado para o sol
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = limites próprios menos rigorosos que um requisito: { $limits }
finding-recommendation-relaxed = limites próprios menos rigorosos que uma recomendação: { $limits }
finding-limit-tightened = limites próprios mais rigorosos que a norma: { $limits }
finding-guard = uma banda de guarda da incerteza expandida em cada limite (norma: nenhuma)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (norma: { $practice })
# As in English
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = volte aos limites da norma: apague estes em [limits] no arquivo da campanha
finding-excluded-by-tester = excluídos pelo operador: { counted-intervals }
finding-excluded-by-tester-remedy = nada a fazer, se o motivo registrado se mantém

## What was tested

section-tested = O que foi ensaiado
page-instruments = Instrumentos
page-instruments-quantity = grandeza
page-instruments-instrument = instrumento
page-instruments-uncertainty = incerteza

## Conditions

section-conditions = Condições
# Headers of the table.
page-conditions-condition = condição
page-conditions-limit = limite
page-conditions-short-name = nome curto
page-conditions-standing = caráter
page-conditions-observed = observado
page-conditions-set-aside = descartados
# What is limited. Also within findings.
limit-water-above-ambient = água acima da temperatura ambiente média
limit-water-below-boiling = água abaixo do ponto de ebulição local
limit-water-temperature = temperatura da água
limit-ambient = temperatura ambiente média
limit-irradiance-lowest = irradiância mais baixa no intervalo
limit-irradiance-highest = irradiância mais alta no intervalo
limit-irradiance-change = variação da irradiância no intervalo
limit-wind-mean = vento médio
limit-wind-gust = vento mantido por mais de dez minutos (descarta a série)
limit-solar-time-start = hora solar no início
limit-solar-time-end = hora solar no fim
limit-solar-time = hora solar
limit-interval = duração de um intervalo
limit-load = água por m² de área de captação
limit-load-tolerance = desvio admitido da carga
limit-intervals = intervalos usados
limit-days = dias com intervalos usados
limit-r-squared = R² da reta
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = requisito
standing-recommendation = recomendação
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = próprio (requisito)
standing-own-recommendation = próprio (recomendação)
# As in English
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = sem reta
# Of gusts.
conditions-never = nunca
conditions-gust = por { $time } no máximo
# Intervals were formed, and none of them is used.
conditions-none-used = nenhum usado
conditions-no-interval = nenhum intervalo
conditions-not-measured = não medido
conditions-observed = Observado: do menor ao maior de todos os intervalos. Um intervalo que não cumpre várias condições é contado em cada uma. Nomes curtos: os das figuras e da tabela de intervalos.
conditions-r-squared = R² abaixo do seu limite: a norma pede apenas uma nota; este relatório não declara a conformidade.
# "Own" as in standing-own-requirement.
conditions-own = Os limites marcados como “próprio” são da campanha e diferem dos da norma.
conditions-guard = Aplica-se uma banda de guarda: um valor só conta como dentro de um limite quando está dentro dele com toda a sua incerteza, segundo a regra de decisão na última seção.

## Runs

section-runs = Séries
# Of more runs than are all shown.
runs-shown = Há { $runs } séries, mais de { $most }: { $shown } são mostradas, uma em cada { $step }, a última e as dos intervalos influentes que são nomeados. As outras estão abaixo pelo nome; a reta se baseia em todas, e todos os seus intervalos estão em { $file }. “runs_shown = "all"” em [report] mostra todas as séries.
page-runs-others = Séries sem figura
runs-axes = Todas as séries têm os mesmos eixos.
runs-axes-but-clock = Todas as séries têm os mesmos eixos, exceto o da hora.
runs-axes-own-start = Todas as séries têm os mesmos eixos; o da hora começa com cada série e tem a mesma duração em todas.
runs-shaded = Sombreado: intervalos usados. Pontilhado: limites.
runs-wind = Vento: leituras em linha fina, médias dos intervalos em linha grossa.
runs-no-wind = O vento não foi medido.
runs-no-irradiance = A irradiância não foi medida.
runs-lanes = Embaixo: intervalos não usados, por motivo, com o seu número.
runs-aimed = Triângulos: reorientado, segundo as notas do registro.
runs-predicted = r.m.s.: temperatura da água prevista menos medida, média quadrática.
run-title = Série { $number }, { $date }
run-used = { $used } de { $of } usados
run-load = { $water } de água, { $load }
run-aimed = orientado a cada { $minutes } min
# As in English
run-predicted = r.m.s. { $rms } K
run-tester = Operador: { $note }
run-hole = Nenhum intervalo de { $from } a { $to }: ali não há duas leituras da água separadas por { $shortest } a { $longest } minutos.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Painéis em função da hora local do relógio, de { $from } a { $to }: água entre { $coldest } e { $hottest } graus Celsius com a temperatura ambiente; { $irradiance }; { $wind }. Usados e sombreados: { $used } de { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Descartados: { $reasons }.
run-alt-none-aside = Nada é descartado.
# As in English
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = A temperatura da água prevista e a medida diferem em { $rms } kelvins, média quadrática.
run-alt-not-predicted = A reta nada prevê para esta série.
run-alt-aimed = Reorientado { $times } vezes segundo as notas do registro.
run-alt-aimed-once = Reorientado uma vez segundo as notas do registro.
run-alt-irradiance = irradiância entre { $lowest } e { $highest } watts por metro quadrado
run-alt-no-irradiance = irradiância não medida
run-alt-wind = vento entre { $lowest } e { $highest } metros por segundo
run-alt-no-wind = vento não medido

## Intervals

section-intervals = Intervalos
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = hora local
# As in English
page-intervals-solar = solar
page-intervals-water = água, °C
# As in English
page-intervals-ambient = amb., °C
page-intervals-irradiance = irradiância, W/m²
page-intervals-range = mín.–máx.
page-intervals-wind = vento, m/s
# As in English
page-intervals-power = P, W
# As in English
page-intervals-difference = Td, K
# As in English
page-intervals-standardised = Ps, W
interval-no-irradiance = não normalizado: sem irradiância
page-intervals-continued = continuação
intervals-shown = Intervalos das { $shown } séries mostradas; todos os { $intervals } estão em { $file }.
intervals-note = Água: no início e no fim do intervalo. Irradiância: média, depois da menor à maior leitura. P: potência de cozimento. Td: temperatura média da água menos a do ambiente. Ps: P normalizada para 700 W/m².
intervals-dots = Ponto: o intervalo não é usado, por este motivo.
intervals-us = 1 K, como diferença de temperatura, equivale a { $fahrenheit } °F.
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = a água ainda estava perto demais da temperatura ambiente
reason-water-above-window = a água estava perto demais da ebulição
reason-ambient-out-of-range = o ar estava frio demais ou quente demais
reason-irradiance-low = o sol estava fraco demais
reason-irradiance-high = o sol estava forte demais
reason-irradiance-unsteady = o sol estava instável
reason-wind-high = havia vento demais
reason-outside-solar-window = era cedo demais ou tarde demais no dia solar
reason-reading-gap = faltavam leituras
reason-excluded-by-tester = o operador excluiu o trecho
reason-not-cloudless = o operador não declara que o céu estava sem nuvens
lane-water-below-window = fria
lane-water-above-window = quente
lane-ambient-out-of-range = ar
lane-irradiance-low = fraca
lane-irradiance-high = forte
lane-irradiance-unsteady = instável
lane-wind-high = vento
lane-outside-solar-window = hora
lane-reading-gap = lacuna
lane-excluded-by-tester = excluído
lane-not-cloudless = céu
lane-not-normalised = sem irrad.

## Regression and uncertainty

section-regression = Regressão e incerteza
regression-none = Não se pode ajustar uma reta: são necessários pelo menos três intervalos usados com irradiância, com diferenças de temperatura distintas.
regression-method = Mínimos quadrados ordinários de Ps em função de Td sobre os intervalos usados de todas as séries, todos com o mesmo peso. P = m·c·(T2 − T1)/Δt com c = 4186 J/(kg K) e o tempo real; Ps = P·700/G com a irradiância média G do intervalo; Td = temperatura média da água menos a do ambiente. As médias são ponderadas pelo tempo.
# Labels, and what stands beside them.
regression-line = reta
regression-intercept = coeficiente linear a
regression-watts = { $value } W, erro-padrão { $error } W
regression-slope = coeficiente angular b
regression-watts-per-kelvin = { $value } W/K, erro-padrão { $error } W/K
regression-residual = resíduos
regression-residual-text = desvio-padrão { $deviation } W
regression-points = pontos
regression-points-text = { counted-intervals } em { counted-days }, { counted-freedom }
residuals-caption = Resíduos dos intervalos usados, por dia: em função da diferença de temperatura, da hora e dos quantis de uma distribuição normal. Tracejado: o dobro do seu desvio-padrão; à direita, a própria distribuição normal.
# Read out to those who do not see the figure.
residuals-alt = Resíduos em relação à reta, em watts, em função da diferença de temperatura, em kelvins, e da hora local do relógio, com uma marca para cada dia; desvio-padrão { $deviation } watts; { $outside ->
    [one] { $outside } de { $points } pontos está mais longe da reta do que duas vezes esse valor.
   *[other] { $outside } de { $points } pontos estão mais longe da reta do que duas vezes esse valor.
}
page-scatter = Efeitos dos dias, autocorrelação, pontos influentes
page-uncertainty = Incerteza de Ps(50)
# Headers of a table of six columns.
page-uncertainty-source = fonte
page-uncertainty-of-source = base
# Type A or B of the GUM.
page-uncertainty-type = tipo
page-uncertainty-sensitivity = sensibilidade
# As in English
page-uncertainty-of-rating = u, W
# As in English
page-uncertainty-factor = k
page-uncertainty-part = parcela de ±²
section-heat-balance = Balanço térmico
page-balance-quantity = grandeza
balance-what = A água recebe o que o fogão ganha do sol menos o que perde para o ar: P = g·G − u·Td, com a irradiância G e a diferença de temperatura Td. Assim se pode calcular a potência com qualquer irradiância. O resultado padronizado escala as perdas com o sol; este balanço não.
# Above a column of values, where days are not in the ±, so that it is no 95 % range.
balance-spread = ± de 95 %: dispersão, dias, instrumentos
balance-spread-one-day = ± sem os dias, não de 95 %: dispersão, instrumentos
balance-gain = ganho do sol, g
balance-gain-text = { $value } m²
balance-loss = perda para o ar, u
balance-loss-text = { $value } W/K
balance-power = potência a 700 W/m² e 50 K, 700·g − 50·u
balance-power-text = { $value } W
balance-ratio = razão optotérmica, g/u
balance-ratio-text = { $value } K m²/W
balance-ratio-none = não se dá: a perda pode ser nula
acceptance = semiângulo de aceitação
acceptance-text = { $value }° (de { $lower }° a { $upper }°, 95 %)
acceptance-none = não demonstrado
acceptance-rests-on = O semiângulo de aceitação é quanto o sol pode se afastar do eixo antes que se perca um décimo do ganho. É estimado pela queda da potência entre as orientações anotadas no registro: { $stretches } trechos, com o sol até { $angle }° fora do eixo. A sua faixa inclui a dispersão, as formas possíveis da queda e a precisão das horas anotadas (prática comum).
acceptance-few = Sem semiângulo de aceitação: servem { $teeth } trechos entre orientações anotadas, e são necessários { $least }, cada um com pelo menos { $readings } leituras da água e { $angle }° de movimento do sol.
acceptance-few-remedy = Anote cada orientação no registro, leia a água a cada cinco minutos ou com mais frequência e deixe o sol se mover alguns graus antes de orientar de novo.
acceptance-not-shown = Nenhum semiângulo de aceitação é demonstrado: em { $teeth } trechos entre orientações, com o sol até { $angle }° fora do eixo, o ganho não cai mais do que a dispersão explica.
acceptance-not-shown-remedy = Deixe o fogão sem mover durante uma hora, duas vezes ou mais, com a água a temperatura estável e céu limpo: nesse tempo o sol se move cerca de 15°. Fique ao lado: o foco se afasta da panela e pode queimar ou ofuscar quem atingir, e incendiar o que atingir.
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = Baseia-se em { counted-intervals } em { counted-days } com leituras confiáveis, com { $mean } W/m² em média ({ $range } W/m²). Os limites de tempo atmosférico e de hora não se aplicam aqui; aplicam-se os da temperatura da água, as exclusões do operador e, onde a irradiância é estimada, o céu sem nuvens.
balance-rests-on-steps = Baseia-se em { $steps } passos entre leituras da água, em { counted-days }, com { $mean } W/m² em média ({ $range } W/m²). Os limites de tempo atmosférico e de hora não se aplicam aqui; aplicam-se os da temperatura da água, as exclusões do operador e, onde a irradiância é estimada, o céu sem nuvens.
balance-counts-vessels = Aqui o ganho, a perda e a potência incluem a capacidade térmica dos recipientes, { $heat } J/K: { $basis }. O resultado e a seção sobre o cozimento são só da água.
balance-scaling-adds = Com esta perda, a escala proporcional do resultado de { $mean } W/m² para 700 W/m² acrescenta { $power } W a Ps(50).
balance-scaling-takes = Com esta perda, a escala proporcional do resultado de { $mean } W/m² para 700 W/m² tira { $power } W de Ps(50).
balance-caption = A banda é a do balanço de incerteza; onde Monte Carlo vai mais longe, a tabela dá o extremo mais afastado.
balance-caption-one-day = A banda não inclui a variação entre dias, portanto não é de 95 %; é a do balanço de incerteza e, onde Monte Carlo vai mais longe, a tabela dá o extremo mais afastado.
# Behind a caption.
balance-beyond = Intervalos além das bordas: { $count }.
# Read out to those who do not see the figure.
balance-alt = Gráfico de pontos da potência sobre a irradiância, em metros quadrados, em função da diferença de temperatura sobre a irradiância, de { $lowest } a { $highest } kelvin metro quadrado por watt. Pontos: { counted-intervals } a que a reta se ajusta; cruzes: { $others } outros. A reta começa em { $gain } metros quadrados, sem diferença de temperatura; a perda é de { $loss } watts por kelvin.
# Axes and key of the figure: there is little room.
balance-axis-difference = diferença de temperatura sobre irradiância, Td/G, K m²/W
balance-axis-power = potência sobre irradiância, P/G, m²
balance-key-used = no ajuste ({ $count })
balance-key-others = outros ({ $count })
balance-key-line = g − u·Td/G, banda de 95 % com instrumentos
balance-key-line-one-day = g − u·Td/G, banda sem os dias, com instrumentos
balance-none-irradiance = Não se pode ajustar ganho e perda: a irradiância não foi medida.
balance-none-few = Não se pode ajustar ganho e perda: são necessários pelo menos três intervalos com leituras confiáveis; encontrados: { $intervals }.
balance-none-alike = Não se pode separar ganho e perda: a diferença de temperatura e a irradiância mantiveram quase a mesma razão em todos os intervalos.
balance-source = Mínimos quadrados ordinários de P em função de G e Td sem termo constante, todos os intervalos com o mesmo peso. Segundo Funk e Larson 1998 (Solar Energy 62, 63–68); não é um ensaio segundo a ISO 9806. Razão optotérmica: Lahkar, Bhamu e Samdarshi 2012 (Applied Energy 99, 491–495).

## Cooking

section-cooking = O que isto significa para cozinhar
page-cooking-water = água
# [journey] is put in by the program: "from 20 °C to 95 °C", the message journey.
page-cooking-time = tempo [journey]
page-cooking-range = faixa
page-cooking-boiling = até ferver
page-foods-food = alimento
page-foods-specific-heat = calor específico
page-foods-cooked = cozido a
page-foods-amount = quantidade
page-foods-range = faixa
page-year = Dias de céu limpo ao longo do ano
page-fuel = Combustível substituído
page-dry = Recipiente seco
page-dry-date = data
page-dry-plateau = patamar
page-dry-air = ar
page-dry-irradiance = irradiância
page-dry-difference = diferença por W/m²
page-dry-notes = notas
# As in English
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², estimada
# As in English
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = Temperatura estável mais alta do recipiente vazio e escuro acima do ambiente, dividida pela irradiância; ± para 95 %, um termômetro de forno dentro de ± 10 K onde nenhuma incerteza é indicada. Relaciona a perda de calor com a energia solar e não é uma potência de cozimento. Mullick, Kandpal e Saxena 1987 usam essa razão para fogões de caixa; para outros fogões, só compara entre semelhantes. Um recipiente vazio pode ficar incandescente, rachar ou perder o revestimento: nunca o deixe sozinho.
page-assumed = Suposições

## Cautions

section-cautions = Avisos de segurança

## Provenance

section-provenance = Desvios, notas e proveniência
page-deviations = Desvios
page-tester-notes = Notas do operador
page-notices = Avisos da leitura dos registros
page-logs = Como os registros foram lidos
page-made-with = Feito com
page-sources = O que não foi verificado
# SHA-256: digits that change when a file changes.
page-inputs = Arquivos, com o seu SHA-256
# A photo among the inputs.
input-photo = { $file }, tal como está neste relatório
# { $file }: its name, or input-photo.
input-outside = { $file }, de fora da pasta da campanha
# Um registro longo demais para ir dentro; { $file }: o seu nome, ou input-outside.
input-beside = { $file }, não dentro deste relatório, mas junto dele ({ $bytes } bytes)
inputs-beside = { $count ->
    [one] { $count } registro de mais de { $limit } MB não está dentro deste PDF. Guarde-o com o PDF, na mesma pasta e com o seu nome: “simmerline verify” precisa dele, e só o aceita se o seu SHA-256 for o impresso aqui. “--logs DIR” indica outra pasta. “report --carry-all” põe um registro assim dentro do PDF.
   *[other] { $count } registros de mais de { $limit } MB não estão dentro deste PDF. Guarde-os com o PDF, na mesma pasta e com os seus nomes: “simmerline verify” precisa deles, e só aceita cada um se o seu SHA-256 for o impresso aqui. “--logs DIR” indica outra pasta. “report --carry-all” põe registros assim dentro do PDF.
}

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = sem indicação

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Fogão de caixa
cooker-panel = Fogão de painéis
cooker-concentrating = Fogão concentrador
cooker-tube = Fogão de tubo
aperture-circle = círculo, { $diameter } de diâmetro
aperture-rectangle = retângulo, { $width } por { $height }
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = polígono regular, { $sides } lados, { $across } entre vértices
aperture-outline = contorno de { $points } pontos
# { $shape }: one of the four above. The beam is the light that comes straight from the sun.
aperture-off-normal = { $shape }, radiação direta a { $degrees }° da sua normal

## Ways to estimate irradiance
#
# Each goes on after "irradiance estimated", and also stands alone after a comma.

estimated-clear-sky = por um modelo de céu limpo (Ineichen e Perez 2002)
estimated-from-horizontal = a partir de um sensor na horizontal (Erbs, Klein e Duffie 1982)
estimated-station = a partir do registro de uma estação próxima
estimated-solar-panel = a partir da corrente de curto-circuito de um painel solar

## Classes of instruments

# Also within budget-assumed and notice-instrument-taken: "assumed a kitchen scale".
class-pyranometer-a = piranômetro da classe A
class-pyranometer-b = piranômetro da classe B
class-pyranometer-c = piranômetro da classe C
class-reference-cell = célula de referência
class-solar-panel = painel solar pela sua corrente de curto-circuito
class-hand-held-meter = medidor portátil
class-thermocouple-t-1 = termopar tipo T, classe 1
class-thermocouple-t-2 = termopar tipo T, classe 2
class-thermocouple-k-1 = termopar tipo K, classe 1
class-thermocouple-k-2 = termopar tipo K, classe 2
class-thermocouple-j-1 = termopar tipo J, classe 1
class-thermocouple-j-2 = termopar tipo J, classe 2
class-pt100-a = Pt100, classe A
class-pt100-b = Pt100, classe B
class-kitchen-thermometer = termômetro de cozinha
class-oven-dial = termômetro de forno de ponteiro
class-measuring-jug = jarra graduada
class-platform-scale = balança de plataforma
class-kitchen-scale = balança de cozinha
class-watch = relógio, lido por uma pessoa
class-logger = relógio de um registrador de dados
# What the uncertainty of a class follows from. 95 %: level of confidence.
basis-for-95-percent = ± { $limit } % para 95 %
basis-within-percent = dentro de ± { $limit } %
basis-within-kelvin = dentro de ± { $limit }
basis-within-kelvin-read = dentro de ± { $limit }, lido a { $step }
basis-within-seconds = dentro de ± { $limit } s

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
# As in English
subtitle-cooker = { $cooker }, { $area }
# As in English
subtitle-site = { $site }, { $elevation }
subtitle-tester = ensaiado por { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = { $first } a { $last }
# "28 September to 3 October 2026".
dates-of-a-year = { $day } de { $month } a { $last }
dates = { $first } a { $last }

## What was tested
#
# Labels stand at the left in a column of about 18 letters; longer ones break.

tested-photo = O fogão tal como foi ensaiado.
# Read out to those who do not see it.
tested-photo-alt = Fotografia do fogão { $cooker }
tested-cooker = Fogão
tested-name = nome
tested-identification = identificação
tested-type = tipo
tested-area = área de captação
# As in English
tested-aperture = abertura
tested-description = descrição
tested-condition = estado
tested-received = recebido em
tested-mass = massa
tested-cost = custo
# { $currency }: as the tester wrote it.
# As in English
tested-cost-text = { $cost } { $currency }
tested-cost-no-currency = { $cost } (moeda não indicada)
tested-load = Carga
tested-water = água
tested-per-area = por área de captação
tested-per-area-text = { $load } (norma: { $practice })
tested-per-area-own = { $load } (limite próprio: { $own })
tested-vessels = recipientes
tested-environment = Ambiente dos intervalos usados
environment-ambient = ar ambiente
environment-irradiance = irradiância
environment-wind = vento
environment-numbers = média { $mean }, leituras { $range }
environment-none = nenhum intervalo usado
tested-site = Local
tested-place = local do ensaio
tested-position = posição
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
tested-boiling = a água ferve a
tested-boiling-by-pressure = { $boiling }, pela pressão medida de { $pressure } hPa
tested-boiling-by-elevation = { $boiling }, pela altitude
tested-time-zone = fuso horário
tested-test = Ensaio
tested-method = método
# The title of the standard stands in English.
# As in English
tested-method-text = ASAE { $procedure }, testing and reporting solar cooker performance
tested-dates = datas
tested-dates-text = { $dates }, { $runs ->
        [one] { $runs } série
       *[other] { $runs } séries
    }
tested-tracking = orientação
# { $minutes }: a number, or a list of numbers.
tested-tracking-text = reorientado a cada { $minutes } min
tested-issued = relatório emitido
tested-parties = Laboratório e cliente
tested-laboratory = laboratório
tested-laboratory-not-stated = nome e endereço não indicados
tested-tester = operador
tested-authorised = autorizado por
tested-client = cliente
tested-contact = contato do cliente
tested-client-data = fornecido pelo cliente
tested-sampling = amostragem
tested-not-sampled = sem indicação; ensaiado como recebido, sem amostragem
tested-others = resultados externos
tested-others-station = irradiância, do registro de uma estação próxima
tested-stated-note = Os dados do fogão, da carga, do local, do laboratório e do cliente são os indicados pelo operador e não foram verificados; os erros deles, e os das incertezas indicadas, passam para os resultados. Os resultados referem-se ao fogão como recebido.

## What was tested: instruments

tested-water-temperature = temperatura da água
tested-ambient-temperature = temperatura ambiente
tested-wind-speed = velocidade do vento
tested-water-mass = massa de água
tested-irradiance-estimated = irradiância, estimada
tested-irradiance-normal = irradiância, normal à radiação direta
tested-irradiance-horizontal = irradiância, plano horizontal
tested-irradiance-plane-assumed = irradiância, plano não indicado, tomado como normal à radiação direta
instrument-not-measured = não medido
# Beside an uncertainty that may be stated or not.
instrument-not-described = não descrito
# { $description }: the tester's own words; { $id }: a mark or number.
# As in English
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
# As in English
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
instrument-estimated-uncertainty = { $uncertainty }; { $budget }
instrument-uncertainty-of-model = a do modelo; { $budget }
# { $budget }: where it stands.
budget-in-section = seção { $section }
budget-in-own-report = o balanço de incerteza está no seu próprio relatório
instrument-by-class = pela sua classe, { $basis }
instrument-by-eye = a olho, escala de Beaufort (WMO-No. 8)
instrument-by-eye-uncertainty = a faixa de um grau da escala, por exemplo { $speeds }
uncertainty-percent = { $percent } % da leitura
# As in English
# As in English
# As in English
uncertainty-seconds = { $seconds } s
tested-instruments-note = Incertezas-padrão (k = 1), como indicadas pelo operador; “pela sua classe”: limites da classe; a seção { $section } diz o que se supõe onde nenhuma das duas é indicada. A norma pede o sensor da água no centro, 10 mm acima do fundo do recipiente, o vento medido ao lado do fogão e à altura dele, e a carga distribuída por igual entre os recipientes; nada disso foi verificado.

## Regression and uncertainty: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = combinada
budget-root = raiz da soma dos quadrados
# The rating with its expanded uncertainty.
# As in English
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (não 95 %)
budget-scatter = dispersão em torno da reta
budget-scatter-text = { $deviation } W por intervalo, { $intervals ->
        [one] { $intervals } intervalo
       *[other] { $intervals } intervalos
    }
budget-reading = leitura da temperatura da água
budget-reading-text = { $deviation } W por intervalo, { $intervals ->
        [one] { $intervals } intervalo
       *[other] { $intervals } intervalos
    }; mais que a dispersão observada
budget-days = intervalos e dias
budget-days-text = { $days ->
        [one] { $days } dia, omitido
       *[other] cada um de { $days } dias, omitido um de cada vez
    }
budget-per-percent = W por %
budget-per-kelvin = W por K
# As in English
budget-percent = { $share } %
budget-tiny = outras, cada uma abaixo de { $share } %
budget-offset-of = { $known } (parte constante)
budget-scale = { $percent } % da distância a { $about } (parte de escala)
# { $uncertainty }: "0.5 K" or "3 % of the reading".
budget-stated = { $uncertainty }, conforme indicado
# { $class }: one of the messages that begin with class-; { $basis }: one that begins with basis-.
# As in English
budget-class = { $class }: { $basis }
budget-assumed = por suposição, { $class }: { $basis }
# What is in error, in the same table, and in the sentences below.
error-irradiance = irradiância
error-clear-sky = irradiância, estimada
# From the horizontal plane to the plane normal to the beam.
error-conversion = irradiância, convertida para o plano virado para o sol
# A weather station a few kilometres away.
error-distance = irradiância, na estação
error-water-temperature = temperatura da água, erro constante
error-water-scale = temperatura da água, erro de escala
error-ambient-temperature = temperatura ambiente, erro constante
error-ambient-scale = temperatura ambiente, erro de escala
error-water-mass = massa de água
error-specific-heat = calor específico da água
error-clock-rate = tempo
# What their uncertainty follows from, where it is not the tester's to state.
known-clear-sky = { $percent } %: modelo de céu limpo 5 %, turbidez dentro de ± 2 o restante
known-conversion = conversão { $percent } %, com a radiação direta conhecida dentro de um quinto
known-distance = { $percent } % para uma estação próxima
known-specific-heat = 4186 J/(kg K) dentro de ± { $percent } %
known-clock-rate = andamento do relógio dentro de ± { $percent } %
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = prática comum
source-wmo-8 = WMO-No. 8, totais horários, para as classes da ISO 9060:1990 (padrão secundário, primeira, segunda) que as A, B, C de 2018 seguem
source-iec-60584 = IEC 60584-1:2013, tolerância até 100 °C
source-iec-60751 = IEC 60751, tolerância a 100 °C
source-clear-sky = Ineichen e Perez 2002; Reno, Hansen e Stein 2012 (SAND2012-2389); turbidez por prática comum
source-conversion = Erbs, Klein e Duffie 1982; Gueymard e Ruiz-Arias 2016
source-specific-heat = IAPWS-IF97, 10 °C a 95 °C

## Regression and uncertainty: what the budget comes to

# As in English
budget-result = Ps(50) = { $rating }
budget-result-not-valid = Não válido (página um): o balanço abaixo é o das leituras, que se contradizem.
budget-rule = Intervalo: a raiz da soma dos (k·u)². Onde uma verificação por Monte Carlo (JCGM 101:2008) difere em mais que a sua tolerância, cada extremo é o mais afastado, e o ± é o lado mais longo. O JCGM 100:2008, G.4, usa um só k para todas as linhas; com poucos dias, isso deu intervalos estreitos demais em simulações.
budget-note-columns = k: t de Student para dispersão e dias, 1,96 para instrumentos. Parcela: (k·u)² da linha sobre a soma de todas; negativa onde um erro compensa parte de outro. Tipo A: por estatística dos intervalos; B: de outro modo.
budget-note-common = Os erros dos instrumentos são comuns a todos os intervalos. Os de irradiância, massa, calor específico e tempo mudam a escala de toda a reta e nunca aparecem na sua dispersão; um erro constante de temperatura anula-se na subida e só desloca Td, um erro de escala faz as duas coisas.
budget-note-thermometer = A incerteza u de um termômetro é tomada como independente a { $cold } e a { $hot } (prática comum): um desvio constante de u/√2, e um erro de escala em torno de { $about } que vale u/√2 em cada extremo. Água e ar lidos por um mesmo instrumento têm os dois em comum.
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = O que o operador não indicou vem de: { $sources }. Limites sem mais informação são tomados como retangulares, u = limite/√3 (JCGM 100:2008, 4.3.7).
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = Para { $quantities }, o arquivo da campanha não indica incerteza nem classe, e supõe-se a classe mais cautelosa. Indicar o que foi usado muito provavelmente reduzirá a incerteza.
budget-note-resolution = Da dispersão de { $scatter } W por intervalo, a resolução do termômetro responde por { $step } W e a hora da leitura por { $moment } W, em soma quadrática; as duas fazem parte dela.
budget-note-resolution-most = Da dispersão de { $scatter } W por intervalo, a resolução do termômetro responde por { $step } W e a hora da leitura por { $moment } W, em soma quadrática; as duas fazem parte dela. Intervalos vizinhos têm uma leitura em comum, por isso a maior parte se anula ao longo de uma série; o resto é a maior parte do que dispersão e dias dão ao resultado, e um termômetro mais fino o reduziria.
budget-note-resolution-beyond = A resolução do termômetro daria por si só uma dispersão de { $step } W por intervalo, e a hora da leitura { $moment } W: juntas, mais que os { $scatter } W observados. O termômetro foi, portanto, lido em passos mais finos que os indicados ou supostos, ou os seus erros de arredondamento se anularam por acaso. Indicar o passo em que foi lido (resolution_k) pode reduzir a incerteza.

## Regression and uncertainty: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = Sem verificação por Monte Carlo: a irradiância é tão incerta que em algumas simulações cai a zero ou menos. O intervalo, então, é pouco mais que um palpite.
drawn-holds = Monte Carlo, { $trials } simulações dos mesmos erros, propagados por leituras, potência, regressão e reta: 95 % delas de { $lower } a { $upper } W, dentro da tolerância de { $tolerance } W. O intervalo é o do balanço.
drawn-apart = Monte Carlo, { $trials } simulações dos mesmos erros, propagados por leituras, potência, regressão e reta: 95 % delas de { $lower } a { $upper } W. Difere em até { $apart } W do intervalo do balanço, { $from } a { $to } W, mais que a tolerância de { $tolerance } W.
drawn-because-divided = Causa principal: a potência é dividida por uma irradiância cuja incerteza-padrão é de { $percent } %, por isso um erro para um lado muda o resultado mais que o mesmo erro para o outro.
drawn-because-curved = Causa principal: erros que não são da irradiância não agem de forma proporcional.
drawn-because-limits = Causa principal: os erros dos quais só se conhecem os limites não têm caudas, e o balanço supõe que as têm.
drawn-because-few = Causa principal: com { $freedom ->
    [one] { $freedom } grau
   *[other] { $freedom } graus
} de liberdade, o t de Student e uma distribuição normal não se combinam exatamente como uma raiz de quadrados.
drawn-because-unsettled = Causa principal: as próprias simulações; com { $freedom ->
    [one] { $freedom } grau
   *[other] { $freedom } graus
} de liberdade, os seus extremos se estabilizam devagar.
drawn-interval = O intervalo é, portanto, de { $from } a { $to } W.
drawn-settled-to = Os extremos do intervalo de Monte Carlo são conhecidos a ± { $within } W.

## Regression and uncertainty: what more data would bring

outlook-at-best = Mais ensaios com estes instrumentos não podem reduzir o ± abaixo de { $least } W.
outlook-reached = O objetivo de ± { $target } W foi alcançado.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = O objetivo de ± { $target } W exige { $more }, supondo a dispersão vista até agora.
outlook-more-one-day = O objetivo de ± { $target } W exige { $more }, supondo a dispersão vista até agora e que os dias não diferem.
outlook-intervals = { $intervals ->
        [one] mais { $intervals } intervalo usado
       *[other] mais { $intervals } intervalos usados
    }
outlook-intervals-and-days = { $intervals ->
        [one] mais { $intervals } intervalo usado
       *[other] mais { $intervals } intervalos usados
    } em { $days ->
        [one] mais { $days } dia
       *[other] mais { $days } dias
    }
# { $heaviest }: one of the sentences that follow.
outlook-out-of-reach = O objetivo de ± { $target } W não pode ser alcançado com mais intervalos: só os instrumentos deixam ± { $least } W. { $heaviest }
heaviest-irradiance = A irradiância é o que mais pesa.
heaviest-clear-sky = A irradiância, estimada, é o que mais pesa.
heaviest-conversion = A irradiância, convertida para o plano virado para o sol, é o que mais pesa.
heaviest-distance = A irradiância, na estação, é o que mais pesa.
heaviest-water-temperature = A temperatura da água é o que mais pesa.
heaviest-water-scale = A escala do termômetro da água é o que mais pesa.
heaviest-ambient-temperature = A temperatura ambiente é o que mais pesa.
heaviest-ambient-scale = A escala do termômetro do ambiente é o que mais pesa.
heaviest-water-mass = A massa de água é o que mais pesa.
heaviest-specific-heat = O calor específico da água é o que mais pesa.
heaviest-clock-rate = O tempo é o que mais pesa.
outlook-too-far = O objetivo de ± { $target } W exigiria mais intervalos do que alguém mede, supondo a dispersão vista até agora.
outlook-too-far-one-day = O objetivo de ± { $target } W exigiria mais intervalos do que alguém mede, supondo a dispersão vista até agora e que os dias não diferem.

## Page one, and regression and uncertainty: what limits the number most

limits-most-few-days = A maior parte do ± se deve a haver apenas { $days ->
    [one] { $days } dia
   *[other] { $days } dias
} ({ $percent } % do seu quadrado).
limits-most-days = A maior parte do ± é a dispersão entre dias ({ $percent } % do seu quadrado).
limits-most-within-days = A maior parte do ± é a dispersão dentro dos dias e entre eles ({ $percent } % do seu quadrado).
limits-resolution = A maior parte da dispersão entre intervalos se deve à resolução do termômetro da água.
limits-most-scatter = A maior parte do ± é a dispersão dos intervalos ({ $percent } % do seu quadrado).
limits-most-resolution = A maior parte do ± é a dispersão ({ $percent } % do seu quadrado), devida sobretudo à resolução do termômetro da água.
limits-most-irradiance = A maior parte do ± é a incerteza da irradiância ({ $percent } % do seu quadrado).
limits-most-estimated = A maior parte do ± é a estimativa da irradiância ({ $percent } % do seu quadrado).
limits-most-water = A maior parte do ± é a incerteza do termômetro da água ({ $percent } % do seu quadrado).
limits-most-ambient = A maior parte do ± é a incerteza do termômetro do ambiente ({ $percent } % do seu quadrado).
limits-most-mass = A maior parte do ± é a incerteza da massa de água ({ $percent } % do seu quadrado).
limits-most-other = A maior parte do ± vem do calor específico da água e do relógio ({ $percent } % do seu quadrado).

## Regression and uncertainty: days, neighbours and single intervals

days-one = Todos os intervalos usados são de um só dia: não se sabe quanto os dias diferem, e isso não está na incerteza. Outro dia pode muito bem dar um valor fora da faixa indicada.
days-too-few-intervals = Há intervalos de menos para distinguir os dias da dispersão; quanto os dias diferem não está na incerteza.
days-no-scatter = Os intervalos estão nas retas dos seus dias sem nenhuma dispersão, por isso os dias não podem ser testados.
# As in English
days-test = F({ $between }, { $within }) = { $statistic }, { $p }
# { $numbers }: days-numbers. One of days-left-out and days-left-out-two follows
# after the first three.
days-differ = Os dias diferem mais do que explica a dispersão dentro de cada dia ({ $numbers }).
days-not-shown = Os dias não diferem mais do que explica a dispersão dentro de cada dia ({ $numbers }).
days-count = Contam como observações independentes os { $days } dias, não os { $intervals } intervalos: omite-se um dia de cada vez, o que cobre diferenças de nível e de inclinação e deixa { $freedom ->
    [one] { $freedom } grau
   *[other] { $freedom } graus
} de liberdade.
days-count-two = Contam como observações independentes os { $days } dias, não os { $intervals } intervalos: omite-se um dia de cada vez, com { $freedom ->
    [one] { $freedom } grau
   *[other] { $freedom } graus
} de liberdade. Dois dias dizem pouco sobre quanto os dias diferem, por isso o intervalo é largo.
days-agree = Omitir cada um dos { $days } dias, um de cada vez, dá um intervalo mais estreito que a dispersão dos intervalos, por isso se usa essa dispersão.
days-cannot-be-left-out = Nenhum dia pode ser omitido, pois os demais não dão uma reta: a incerteza se baseia nos intervalos, e a variação entre dias não está nela.
neighbours-drift = Durbin–Watson dentro das séries d = { $statistic } (2: independentes), bilateral { $p }: intervalos vizinhos erram para o mesmo lado (autocorrelação positiva), como quando a orientação ou o céu muda aos poucos.
neighbours-share = Durbin–Watson dentro das séries d = { $statistic } (2: independentes), bilateral { $p }: intervalos vizinhos têm em comum uma leitura da água, por isso os seus erros se alternam.
neighbours-by-turns = Durbin–Watson dentro das séries d = { $statistic } (2: independentes), bilateral { $p }: os erros de intervalos vizinhos se alternam mais do que explica a leitura da água que têm em comum, como quando o fogão é reorientado a cada dois intervalos.
neighbours-not-shown = Durbin–Watson dentro das séries d = { $statistic } (2: independentes), bilateral { $p }: nenhuma autocorrelação demonstrada.
influential = Intervalos influentes (distância de Cook > 4/n), nenhum removido: { $intervals }.
influential-more = Intervalos influentes (distância de Cook > 4/n), nenhum removido: { $intervals }; mais { $more }.
influential-one = { $date } { $time } ({ $distance }; sem ele { $power } W)

## Provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = Limite próprio: { $what } { $limit }.
# guard = true está escrito no arquivo da campanha e fica como está.
deviation-guard = Regra de decisão própria: a incerteza conta contra cada limite, o que a norma não pede.
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run }: de { $from } a { $to } excluído pelo operador: { $reason }.
deviation-excluded-no-reason = { $run }: de { $from } a { $to } excluído pelo operador: nenhum motivo indicado.
deviation-findings = Veja também as deficiências ou notas no início deste relatório.
deviation-interval = Duração do intervalo: aceitam-se { $shortest } a { $longest } s, com a potência calculada sobre o tempo real; a norma pede { $practice } s.
# Labels stand at the left; there is room for 20 letters.
made-with = programa
made-issued = emitido
made-practice = norma
made-solar-time = hora solar
made-solar-time-text = NREL/TP-560-34302, a partir da hora e da longitude
made-boiling = ponto de ebulição
made-boiling-text = atmosfera da ISO 2533 onde não se mediu a pressão, saturação da IAPWS-IF97
made-decision = regra de decisão
made-decision-text = cada valor observado é comparado com o seu limite, sem margem para a sua incerteza; o que iguala o limite o cumpre: aceitação simples, JCGM 106:2012
made-decision-guarded = cada valor observado é comparado com o seu limite junto com a sua incerteza expandida (k = { $factor }), e o cumpre onde toda essa faixa está dentro: irradiância ± { $irradiance } %, água ± { $water }, ar ± { $ambient }, uma hora ± { $clock } s, massa de água ± { $mass } %, { $wind }; área de captação, contagens e R² sem ela: aceitação com banda de guarda, JCGM 106:2012, 8.3, e ILAC-G8
made-decision-wind = vento ± { $wind }
made-decision-no-wind = vento sem ela, pois a sua incerteza não está indicada
made-irradiance = irradiância
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = estimada { $way }; plano normal à radiação direta segundo Liu e Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = estimada { $way }, turbidez de Linke { $turbidity } como indicada; plano normal à radiação direta segundo Liu e Jordan 1963
made-irradiance-usual = estimada { $way }, turbidez de Linke { $turbidity } (prática comum); plano normal à radiação direta segundo Liu e Jordan 1963
unchecked-memory = Citado de memória, sem o texto à mão: { $works }. Os cálculos são testados com exemplos publicados e recálculo independente; estes valores não são. Verifique aqueles de que dependa uma decisão.
unchecked-common = “Prática comum” significa que não se conhece fonte publicada.
memory-s580 = ASAE S580.1 (os seus limites, parafraseados, e as posições que pede para os sensores)
memory-decision = JCGM 106:2012 (regra de decisão)
memory-decision-guarded = JCGM 106:2012 e ILAC-G8 (regra de decisão)
memory-iec-60751 = IEC 60751 (tolerância de termômetros de resistência)
memory-clear-sky = Reno, Hansen e Stein 2012 (os 5 % de um modelo de céu limpo)
memory-conversion = Gueymard e Ruiz-Arias 2016 (a dispersão da radiação direta)
memory-balance = Funk e Larson 1998 (o balanço térmico; viu-se o resumo); Lahkar, Bhamu e Samdarshi 2012 (a razão optotérmica)
memory-dry = Mullick, Kandpal e Saxena 1987 (o recipiente seco)
memory-box = Mullick, Kandpal e Saxena 1987 e IS 13429 (figuras de mérito)
memory-dish = Mullick, Kandpal e Kumar 1991 (parâmetros de um fogão parabólico)
memory-efficiency = Kumar, Vishwanath e Gupta 2012 (exergia máxima; viu-se o resumo)
memory-food = Chen 1985 e o ASHRAE Handbook, Refrigeration (calores específicos dos alimentos)
memory-groups = Piepho 2004 (grupos por letras)
memory-cautions = ISO 13732-1:2006 (queimaduras); Ciochetti e Metcalf 1984 (pasteurização)
report-end = Fim do relatório { $number }
# { $minutes }: "20".
balance-readings-far-apart = as leituras distam na maioria { $minutes } minutos, e nenhum intervalo da norma cabe entre elas: o ganho e a perda se apoiam nos passos de uma leitura à seguinte, e são indicativos
balance-readings-far-apart-remedy = leia a água a cada 9 a 11 minutos
balance-one-day = todos os dados são de um só dia, ou nenhum dia pode ser omitido do ajuste, por isso as faixas do ganho e da perda não são de 95 %
balance-one-day-remedy = ensaie em outros dias
balance-irradiance-hardly-varied = a irradiância quase não variou ({ $range } W/m²): o ganho e a perda se separam só pela temperatura da água, e os valores com outra irradiância se baseiam no modelo
balance-irradiance-hardly-varied-remedy = ensaie com sol mais fraco e com sol mais forte
balance-loss-not-shown = a perda é de { $loss } W/K e pode ser nula ({ $range } W/K)
balance-loss-not-shown-remedy = ensaie em uma faixa mais larga de temperaturas da água, e em mais dias
cooking-opinion = Os tempos, as quantidades e os meses desta seção, e qualquer tempo de aquecimento no início deste relatório, são uma interpretação: decorrem do ensaio e das suposições abaixo, e não foram medidos.

## What it means for cooking

cooking-no-line = Nenhuma reta foi ajustada, por isso não há tempos de aquecimento.
cooking-not-valid = Omitido: os números contradizem a física, por isso nada se conclui sobre tempos de aquecimento, alimentos ou meses.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, como ensaiado
cooking-no = não
cooking-no-ends = não; o aquecimento termina perto de { $temperature }
cooking-probably-not = provavelmente não
cooking-probably-not-ends = provavelmente não; o aquecimento termina perto de { $temperature }
cooking-time-range = { $shortest } a { $longest }
cooking-time-open = { $shortest } ou mais, talvez nunca
# As in English
cooking-boil = { $time } ({ $range })
cooking-foods-title = Alimentos levados à temperatura de cozimento e mantidos nela dentro de { $time }
cooking-foods-all = Em { $time }, a janela solar, cada um destes alimentos é levado à sua temperatura de cozimento e mantido nela, na quantidade da carga ensaiada, { $load }, ou mais: { $foods }.
# As in English
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = A partir de { $start } com { $irradiance } W/m², dentro da janela solar; no máximo a carga ensaiada, { $load }, além da qual o ensaio nada diz. Calores específicos: Chen 1985, com teores de água do ASHRAE Handbook, Refrigeration. Temperaturas e tempos de cozimento: prática comum; { $safe }: USDA FSIS. Estimativa: confira com um termômetro dentro do alimento.
cooking-amount-or-more = { $amount } ou mais
cooking-cooked-at = { $temperature } por { $time }
cooking-amount-range = { $lowest } a { $highest }
cooking-amount-up-to = de nada a { $highest }
cooking-amount-none = nada
cooking-amount-probably-none = provavelmente nada
cooking-heat-ends = Com { $irradiance } W/m², o aquecimento termina quando a água chega a { $end } ({ $range }), onde a potência chega a zero; aqui a água ferve a { $boiling }.
cooking-heat-ends-or-boils = Pode não levar a água à fervura, aqui { $boiling }: com { $irradiance } W/m², o aquecimento termina, segundo a reta, perto de { $end }, o que é incerto (de { $lowest } até a fervura).
cooking-ends-perhaps = Aqui a água ferve a { $boiling }, provavelmente enquanto o fogão ainda aquece; pela faixa da reta, o aquecimento pode terminar a partir de { $lowest }.
cooking-ends-above = Aqui a água ferve a { $boiling }; o fogão ainda aquece na fervura.
cooking-never-ends = A potência não diminui quando a água aquece, por isso não se obtém um fim do aquecimento; aqui a água ferve a { $boiling }.
cooking-light-of-test = Irradiância constante de { $irradiance } W/m² no plano do sensor, a média dos intervalos usados, com a qual a reta dispensa escala; vento como nos intervalos usados, o fogão reorientado como no ensaio.
cooking-light-asked = Irradiância constante de { $irradiance } W/m² no plano do sensor, como a campanha pede, com a potência pelo balanço térmico; vento como nos intervalos usados, o fogão reorientado como no ensaio.
cooking-air-mean = Ambiente a { $ambient }, a média dos intervalos usados.
cooking-air-asked = Ambiente a { $ambient }, como a campanha pede.
cooking-assumed-load = Toda carga recebe a potência da carga ensaiada; cargas muito menores ou maiores recebem menos ou mais. O calor armazenado pela panela não é contado. Além das temperaturas dos intervalos usados, a reta é prolongada.
cooking-assumed-edges = As faixas seguem a banda de 95 % da potência, com os instrumentos, e valem para a média de muitos aquecimentos, não para um só.
cooking-assumed-edges-one-day = As faixas seguem a banda da potência, com os instrumentos; ela não inclui a variação entre dias e não é de 95 %, por isso em outro dia os tempos podem ficar fora dela.
cooking-no-months = Sem estimativa mensal: a irradiância foi medida no plano horizontal, e o modelo de céu limpo é para o plano de frente para o sol.
cooking-assumed-water = Água não é alimento: os alimentos aquecem mais devagar, e levantar a tampa custa muitos minutos.
food-potatoes = batatas, em pedaços
food-carrots = cenouras, em pedaços
food-cabbage = repolho, picado
food-rice = arroz com o dobro da sua massa de água
food-eggs = ovos, inteiros
food-fish = peixe (bacalhau fresco)

## Clear days through the year

year-note-balance = Estimado para o dia 15 de cada mês sob céu limpo (Ineichen e Perez 2002), contando as horas com { $irradiance } W/m² ou mais no plano normal à radiação direta; nuvens e névoa reduzem o valor. Calor: pelo balanço térmico, para água { $difference } mais quente que o ar; a média dos meses é de { $mean } kWh por dia. Ambiente a { $ambient } o ano todo, fogão orientado o dia todo.
year-note-water = Água: cargas de { $load }, uma após a outra, cada uma de { $start } a { $end } e mantida por { $time } (Ciochetti e Metcalf 1984); { $kilogram } é tomado como { $litre }. Começa a { $start }, por isso os litros não decorrem do calor ao lado. A OMS constata que os vírus morrem apenas devagar entre 60 °C e 65 °C: onde puder, leve a água à fervura plena, e leia o aviso sobre água de beber. Só para água límpida; o calor não remove produtos químicos.
year-caption = Barras: estimativa; traços: a sua faixa só pela incerteza do balanço térmico. Horas contadas: { $fewest } a { $most }.
# As in English
year-hours-of = { $hours } ({ $month })
year-axis-heat = calor por dia, MJ
year-axis-water = água pasteurizada por dia, { $unit }
year-alt = Dois gráficos de barras sobre os meses do ano. { $months }.
year-alt-month = { $month }: { $heat } MJ ({ $heats }) por dia, { $water } L ({ $waters })
fuel-name = combustível
fuel-heat = calor em um dia de céu limpo
fuel-heat-text = { $heat } MJ, a média dos meses acima
fuel-value = poder calorífico inferior
fuel-stove = eficiência do fogão a combustível
fuel-days = dias em um ano
fuel-result = Com estas suposições, todas do operador, o mesmo calor consumiria, por estimativa, { $best } de { $fuel } em um ano ({ $range } só pela incerteza do resultado). Só se economiza na medida em que o fogo realmente não é aceso; nada é prometido.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both.

caution-first = Os regulamentos locais, e a prática de quem tem licença para trabalhar segundo eles, vêm antes de tudo o que está neste relatório. O relatório avalia calor; não é uma declaração sobre a segurança do fogão nem dos alimentos.
caution-governs = Até que uma pessoa que fale português tenha conferido esta tradução, vale o texto em inglês.
caution-burns-title = Queimaduras e escaldaduras
caution-burns-text = A panela, a sua tampa, a cobertura transparente, a grelha e o vapor estão quentes o bastante para queimar ao menor toque, muito antes de a água ferver: o metal nu queima a cerca de 65 °C em menos de um segundo e a cerca de 51 °C em menos de um minuto. Use luvas secas, abra a tampa para o lado oposto a você, faça sombra sobre o fogão e deixe a panela repousar antes de carregá-la. O vidro quente racha quando água fria o toca, e um tubo estreito pode lançar para fora a água fervendo.
caution-light-title = Luz concentrada e ofuscamento
caution-light-text = Nunca olhe para o foco, nem para o sol ou para a sua imagem em um refletor ou painel: não há óculos de sol que tornem isso seguro, e lentes escuras não bastam perto do foco. Mantenha a cabeça e as mãos fora do feixe de luz. Vire o refletor para longe do sol, ou faça sombra sobre ele, antes de pegar a panela. Lembre-se de que ele pode ofuscar vizinhos, motoristas e quem passa.
caution-fire-title = Fogo
caution-fire-text = Um refletor mantém o seu foco enquanto o sol se move, e assim pode pôr fogo em capim seco, pano, madeira ou em uma parede para a qual não estava virado uma hora antes. Monte-o em chão nu, longe de tudo o que pega fogo, tenha água ou areia à mão, e cubra o refletor ou vire-o para baixo quando não está em uso, também dentro de casa e quando guardado. Nunca jogue água em gordura em chamas: cubra a gordura.
caution-unattended-title = Nunca sem vigilância
caution-unattended-text = Alguém que conhece os perigos fica junto do fogão, orienta-o e vigia a panela. Uma panela que ferveu até secar aquece demais, racha ou pega fogo; um frasco fechado ou uma tampa presa com força pode explodir.
caution-children-title = Crianças e animais
caution-children-text = Mantenha crianças e animais fora de uma linha marcada em volta do fogão. Eles não veem o foco, e este pode estar à altura dos seus olhos.
caution-wind-title = Vento
caution-wind-text = Um refletor é como a vela de um barco. Coloque pesos nele ou amarre-o, e guarde-o antes do vento forte: quando tomba, derrama água fervendo e lança o seu foco para outro lugar.
caution-materials-title = Sol, calor e materiais
caution-materials-text = Quem ensaia fica horas ao sol: chapéu, sombra, água e pausas. Não use tinta, película, cola nem metal galvanizado que aqueça perto dos alimentos ou que solte gases ou fumaça; aqueça um fogão novo uma vez sem alimentos, ao ar livre.
caution-food-title = Segurança dos alimentos
caution-food-text = As bactérias se multiplicam depressa entre 5 °C e 60 °C. Os alimentos não podem ficar nessa faixa mais de duas horas no total, uma hora onde o ar está acima de 32 °C; um fogão que aquece devagar, ou uma nuvem, pode fazê-los passar desse limite, e reaquecê-los não desfaz o que já se formou até então. Meça dentro do alimento: pelo menos 74 °C em todo ele. Mantenha os alimentos quentes a 60 °C ou mais. Na dúvida, jogue fora.
caution-water-title = Água de beber
caution-water-text = O calor mata germes; a fervura não remove produtos químicos, sal nem sujeira. Leve toda a água à fervura plena e mantenha-a fervendo por um minuto, acima de { $elevation } por três. Com menos calor, demora mais e é menos seguro: 65 °C por seis minutos é o que se chama de pasteurizado, e os vírus morrem apenas devagar entre 60 °C e 65 °C. Deixe a água esfriar coberta, no recipiente em que foi aquecida.
caution-sources = Fontes. Queimaduras: ISO 13732-1:2006. Alimentos: USDA FSIS, zona de perigo de 40 a 140 °F, regra das duas horas e temperaturas mínimas seguras, das quais 74 °C, a de aves e sobras, é a mais alta; OMS, Cinco Chaves para uma Alimentação mais Segura, 5 °C a 60 °C. Água: conselho da US EPA para ferver a água (1 min, 3 min acima de 5000 pés), tal como citado em Emerging Infectious Diseases 31(8), 2025; WHO/FWC/WSH/15.02; Ciochetti e Metcalf 1984, Appl. Environ. Microbiol. 47. Tudo o mais: prática comum.

## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log }: as linhas não estavam em ordem de tempo e foram ordenadas
notice-repeated-times = { $log }: { $rows ->
        [one] { $rows } linha com a hora de uma linha anterior foi omitida
       *[other] { $rows } linhas com a hora de uma linha anterior foram omitidas
    }; vale a primeira
notice-rows-left-out = { $log }: { $rows ->
        [one] { $rows } linha omitida (linha { $lines }: { $reason })
       *[other] { $rows } linhas omitidas (linhas { $lines }: { $reason })
    }
# { $columns } is a list of notice-unit-assumed.
notice-units-assumed = { $count ->
        [one] não se indica a unidade de uma coluna, lida como { $columns }; indique-a no cabeçalho, ou em [units]
       *[other] não se indica a unidade de algumas colunas, lidas como { $columns }; indique-a no cabeçalho, ou em [units]
    }
notice-unit-assumed = “{ $header }” em { $unit }
notice-beyond-calibration = { $log }: { $readings ->
        [one] { $readings } leitura
       *[other] { $readings } leituras
    } na coluna “{ $column }” fora dos pontos da sua calibração, extrapoladas pela reta mais próxima
notice-quantity-in-both = { $quantity } está em { $log } e em { $weather }; vale a medida ao lado do fogão
notice-weather-in-part = { $weather } só cobre uma parte de { $log }; verifique os relógios dos dois (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log }: dividido em { $runs ->
        [one] { $runs } série
       *[other] { $runs } séries
    } por data e lacuna, cada uma do início da série ao seu fim; não entram { $parts } e { $readings }
notice-log-split-rising = { $log }: dividido em { $runs ->
        [one] { $runs } série
       *[other] { $runs } séries
    } por data e lacuna, cada uma da água mais fria à mais quente, onde a temperatura sobe { $rise } K ou mais; não entram { $parts } e { $readings }
notice-log-parts = { $count ->
        [one] { $count } parte
       *[other] { $count } partes
    }
notice-log-readings = { $count ->
        [one] { $count } leitura
       *[other] { $count } leituras
    }
notice-fault-values = { $log }: { $cells ->
        [one] { $cells } valor de falha na coluna “{ $column }” tratado
       *[other] { $cells } valores de falha na coluna “{ $column }” tratados
    } como ausente; verifique as ligações do sensor
notice-unbelievable = { $readings ->
        [one] { $log }: { $readings } leitura na coluna “{ $column }” não pode ser verdadeira ({ $values } { $unit }) e é tratada como ausente; verifique o sensor
       *[other] { $log }: { $readings } leituras na coluna “{ $column }” não podem ser verdadeiras ({ $values } { $unit }) e são tratadas como ausentes; verifique o sensor
    }
notice-sensors-apart = { $log }: os sensores de { $quantity } diferem em mais de { $apart } em { $readings ->
        [one] { $readings } momento
       *[other] { $readings } momentos
    }; usa-se a sua média: verifique se nenhum falhou
notice-sensors-incomplete = { $log }: em { $readings ->
        [one] { $readings } momento
       *[other] { $readings } momentos
    } um dos sensores de { $quantity } não tem leitura; a média dos outros dá um salto ali, se eles diferem
notice-long-run = { $log }: as leituras abrangem { $days } dias, uma série é um aquecimento em um dia; verifique as datas, defina início e fim, ou split = "daily"
notice-above-boiling = { $log }: a água chega a { $highest }, acima do seu ponto de ebulição de { $boiling } aqui; verifique o sensor, a altitude ou a pressão
notice-odd-noon = { $log }: o meio-dia solar cai às { $noon } pelo relógio; verifique a longitude (leste positivo) e o fuso horário
notice-column-not-found = { $log }: nenhuma coluna foi entendida como { $quantity }, que conta como não medida; não lidas: { $ignored }; se uma delas a contém, indique-a em [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = lido de fora da pasta da campanha, como permitiu quem o gerou (--allow-outside): { $files }
notice-trimmed = { $log }: { $readings ->
        [one] { $readings } leitura antes do início da série ou depois do seu fim omitida
       *[other] { $readings } leituras antes do início da série ou depois do seu fim omitidas
    }
notice-no-intervals = { $log }: não há duas leituras da água separadas por { $shortest } a { $longest } minutos, por isso não há intervalo; meça em passos que somem { $minutes } minutos
notice-idle-exclusion = { $log }: o trecho excluído de { $from } a { $to } não toca nenhum intervalo; verifique as suas horas
notice-stall = { $log }: a água ganha menos da metade do que a reta indica, de { $spans }, como sob uma nuvem, onde se declara que o céu estava sem nuvens; consulte as suas notas, e verifique a orientação
# A span of clock times: from 11:20 to 11:40.
notice-span = { $from } a { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = entre { $cold } e { $hot }
danger-measured = segurança dos alimentos: em { $run } a água esteve { $zone } durante { $time }; os alimentos não podem ficar { $zone } por mais de { $longest } no total (USDA FSIS, OMS), onde as bactérias se multiplicam: cozinhe quantidades menores, comece com água quente, e guarde carne, peixe, ovos, leite e arroz cozido para um sol mais forte ou outro fogão
danger-predicted = segurança dos alimentos: { $predicted }; os alimentos não podem ficar { $zone } por mais de { $longest } no total (USDA FSIS, OMS), onde as bactérias se multiplicam: cozinhe quantidades menores, comece com água quente, e guarde carne, peixe, ovos, leite e arroz cozido para um sol mais forte ou outro fogão
danger-both = segurança dos alimentos: em { $run } a água esteve { $zone } durante { $time }, e { $predicted }; os alimentos não podem ficar { $zone } por mais de { $longest } no total (USDA FSIS, OMS), onde as bactérias se multiplicam: cozinhe quantidades menores, comece com água quente, e guarde carne, peixe, ovos, leite e arroz cozido para um sol mais forte ou outro fogão
danger-expected-never = não se espera que a carga ensaiada chegue a { $hot }
danger-expected = espera-se que a carga ensaiada demore cerca de { $time } para chegar a { $hot } ({ $shortest } a { $longest })
danger-expected-open = espera-se que a carga ensaiada demore cerca de { $time } para chegar a { $hot } ({ $shortest } ou mais, ou que não chegue lá)
# What the line says, within the sentences above.
notice-above-film = à temperatura ambiente, a reta dá { $share } % da energia solar interceptada, mais do que uma película refletora devolve (86 %; prática comum, sem fonte publicada); verifique a área de captação, a massa de água e a irradiância
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = incerteza não indicada, por isso toma-se o instrumento mais cauteloso: { $taken }; indique a classe ou a incerteza em [instruments]
notice-instrument-taken = { $quantity } com { $class }
notice-date-differs = { $log }: a data da série é dada como { $stated }, as suas leituras começam em { $found }; valem as leituras
# Slips. { $zone } is a time zone, { $away } and { $near } are kilometres, { $longitude } and { $latitude } degrees.
notice-odd-noon-sign = { $log }: o meio-dia solar cai às { $noon } pelo relógio; com { $longitude } como longitude cairia às { $meant }: verifique o sinal de longitude_deg (leste positivo), ou então o fuso horário
notice-odd-noon-exchanged = { $log }: o meio-dia solar cai às { $noon } pelo relógio; com latitude e longitude trocadas cairia às { $meant }: verifique se latitude_deg e longitude_deg estão uma no lugar da outra, ou então o fuso horário
notice-far-from-zone-sign = o local fica a { $away } km do lugar principal do seu fuso horário { $zone }; com { $longitude } como longitude ficaria a menos de { $near } km: verifique o sinal de longitude_deg (leste positivo), ou então o fuso horário
notice-far-from-zone-exchanged = o local fica a { $away } km do lugar principal do seu fuso horário { $zone }; com latitude { $latitude } e longitude { $longitude } ficaria a menos de { $near } km: verifique se latitude_deg e longitude_deg estão uma no lugar da outra, ou então o fuso horário
notice-sun-down = { $log }: { $irradiance } W/m² às { $time } de { $date }, quando o sol está aqui abaixo do horizonte; verifique o relógio do registrador e o seu fuso (time_zone em [format]), a data e as coordenadas do local
notice-sun-low = { $log }: { $irradiance } W/m² às { $time } de { $date }, quando o sol está aqui a { $elevation }° de altura e um céu sem nuvens dá no máximo cerca de { $most } W/m²; verifique o relógio do registrador e o seu fuso (time_zone em [format]), as coordenadas do local e a unidade da irradiância
notice-heats-at-night = { $log }: a água aquece das { $from } às { $to } de { $date }, enquanto o sol está aqui abaixo do horizonte; verifique o relógio do registrador e o seu fuso (time_zone em [format]), manhã e tarde, e as coordenadas do local
# { $first } to { $last } are the dates of the other runs.
notice-odd-year = { $log }: as suas leituras são de { $found }, as das outras séries de { $first } a { $last }; se o ano é um engano e se trata de { $meant }, corrija-o no registro ou acerte o relógio do registrador
notice-odd-month = { $log }: as suas leituras são de { $found }, as das outras séries de { $first } a { $last }, e ela está listada entre elas; se o mês é um engano e se trata de { $meant }, corrija-o no registro ou acerte o relógio do registrador
notice-odd-day-and-month = { $log }: as suas leituras são de { $found }, as das outras séries de { $first } a { $last }; se dia e mês estão trocados e se trata de { $meant }, indique isso com date_order em [format], ou corrija a data no registro
notice-date-of-name = { $log }: o seu nome diz { $named }, as suas leituras são de { $found }; corrija o que for engano
notice-clock-not-set = { $log }: as suas leituras são de { $found }, de quando contam relógios que nunca foram acertados; escreva o dia do ensaio no registro, e acerte o relógio do registrador
notice-in-future = { $log }: as suas leituras são de { $found }, e hoje é { $issued }; { $runs ->
        [one] verifique a data no registro e o relógio deste computador
       *[other] ao todo { $runs } séries estão por vir; verifique as datas nos registros e o relógio deste computador
    }
notice-odd-run = { $log }: os seus intervalos recebem { $share } % da potência que diz a reta das outras { $others } séries; se ela é de outro fogão, ou se a sua carga ou as suas colunas são outras, faça dela outra campanha ou corrija-as; se não, diga nas suas notas o que foi diferente
# { $quantity } is a quantity-…; { $time } is a duration.
notice-stuck-sensor = { $log }: { $quantity } é { $value } { $unit } em cada uma das { $readings } leituras durante { $time }, enquanto outras grandezas mudam; verifique se o sensor estava ligado e se essa é a sua coluna; deixe vazias as células onde nada foi medido
# { $first }, { $highest }: numbers as they stand in the log, without a unit.
notice-celsius-as-fahrenheit = { $log }: isto parece °C: a água na coluna “{ $column }” começa em { $first }, perto do ar a { $air }, e chega no máximo a { $highest }; em °F começaria a { $first_c }; se está em °C, escreva (°C) depois do cabeçalho, ou corrija a unidade da água em [units]
notice-celsius-as-fahrenheit-no-air = { $log }: isto parece °C: a água na coluna “{ $column }” começa em { $first } e chega no máximo a { $highest }; em °F começaria a { $first_c }; se está em °C, escreva (°C) depois do cabeçalho, ou corrija a unidade da água em [units]
notice-water-air-exchanged = { $log }: o ar sobe { $air } e a água { $water }; se as colunas estão trocadas, indique cada uma com water_temperature e ambient_temperature em [columns]
# { $runs } is a list of runs; { $water }, { $area } and loads have their units.
notice-load-pounds = { $runs }: { $water } de água sobre { $area } são { $load }; se o número fosse em libras, seriam { $meant }, e se esperam { $expected }: se for, converta-o (1 lb são 0,4536 kg)
notice-load-square-feet = { $runs }: { $water } de água sobre { $area } são { $load }; se a área estivesse em pés quadrados, ou os seus comprimentos em pés, seriam { $meant }, e se esperam { $expected }: se for assim, converta-a (1 ft² são 0,0929 m², 1 ft são 0,3048 m)
notice-load-kilograms = { $runs }: { $water } de água sobre { $area } são { $load }; se quilogramas foram convertidos como se fossem libras, seriam { $meant }, e se esperam { $expected }: se for assim, escreva os quilogramas como foram pesados
notice-load-square-metres = { $runs }: { $water } de água sobre { $area } são { $load }; se metros quadrados foram convertidos como se fossem pés quadrados, seriam { $meant }, e se esperam { $expected }: se for assim, escreva os metros quadrados como foram medidos

## How the logs were read

quantity-time = hora
quantity-date = data
quantity-clock = hora do relógio
quantity-elapsed = tempo decorrido
quantity-water = temperatura da água
quantity-vessel = temperatura do recipiente
quantity-ambient = temperatura ambiente
quantity-irradiance = irradiância
quantity-wind = velocidade do vento
skip-before-header = antes do cabeçalho
skip-units-row = unidades sob o cabeçalho
skip-between = entre o cabeçalho e as leituras
skip-remark = comentário
skip-blank = vazia
skip-header-again = cabeçalho repetido
skip-before-header-again = antes de um cabeçalho repetido
skip-footer = depois da última leitura
skip-cut-off = cortada no fim do arquivo
skipped-more = { $lines } e mais { $more }
skipped-lines = { $count ->
        [one] linha { $lines } omitida ({ $reason })
       *[other] linhas { $lines } omitidas ({ $reason })
    }
# Labels and texts of a list of facts about a log.
log-form = formato
log-form-text = { $written_in }; cabeçalho na linha { $line }; sinal decimal: { $mark }
log-time-text = hora: { $format }, como em “{ $example }”; fuso { $zone }
log-clock = relógio
log-clock-text = { $seconds } s somados a todas as horas
log-notes = notas: leem-se as que dizem que o fogão foi reorientado para o sol
log-not-read = não lidas
log-readings = { $readings ->
        [one] { $readings } leitura de { $from } a { $to }
       *[other] { $readings } leituras de { $from } a { $to }
    }
log-readings-every = { $readings ->
        [one] { $readings } leitura de { $from } a { $to }, na maioria uma a cada { $step } s
       *[other] { $readings } leituras de { $from } a { $to }, na maioria uma a cada { $step } s
    }
# The same once for several logs: a label, and what stands beside it.
log-step = leituras
log-step-text = na maioria uma a cada { $step } s
# How a column was understood: water temperature (synonym), °C (header).
# As in English
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
# As in English
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }); { $corrections }
# As in English
log-column-one-source = { $quantity }, { $unit } ({ $found_by })
# As in English
log-column-one-source-corrected = { $quantity }, { $unit } ({ $found_by }); { $corrections }
found-campaign-file = arquivo da campanha
found-header = cabeçalho
found-synonym = sinônimo
found-elimination = única possibilidade em um arquivo meteorológico
unit-header = cabeçalho
unit-units-row = linha de unidades
unit-campaign-file = arquivo da campanha
unit-cells = células
unit-assumed = sem indicação, suposta
corrected-vessel = recipiente { $vessel }, { $load }
corrected-sensitivity = sensibilidade { $sensitivity } { $unit } por W/m²
corrected-line-plus = calibrado: leitura × { $gain } + { $offset } { $unit }
corrected-line-minus = calibrado: leitura × { $gain } − { $offset } { $unit }
corrected-points = calibrado por pontos, { $unit }: { $points }
# How the file is written: what it is, then what separates its cells.
written-sheet = planilha, folha “{ $sheet }”
written-text = { $encoding }, células separadas por { $delimiter }
written-gzip = gzip, { $encoding }, células separadas por { $delimiter }
encoding-marked = { $name } com marca de ordem de bytes
encoding-stated = { $name } (arquivo da campanha)
delimiter-comma = vírgula
delimiter-semicolon = ponto e vírgula
delimiter-tab = tabulação
delimiter-pipe = barra vertical
delimiter-space = sequências de espaços
delimiter-wide-space = sequências de dois espaços ou mais
mark-comma = vírgula
mark-point = ponto
mark-thousands = { $decimal }, milhares “{ $mark }” (arquivo da campanha)
# How times are written: date and time, newest first.
time-newest-first = { $form }, mais recentes primeiro
time-date-and-time = data e hora
# { $order } is year-month-day or the like, { $from } one of order-from-….
# As in English
time-ordered = { $order } ({ $from })
time-clock-only = hora do relógio, a primeira em { $date }
time-stopwatch = tempo decorrido desde o início da série
time-since-1970 = { $unit } desde 1970
time-serial = dias de planilha desde 1899-12-30
time-elapsed = { $unit } decorridos desde o início da série
zone-epoch = UTC (desde 1970)
zone-start = o do início da série
zone-offsets = diferença para UTC em cada linha
# { $zone } is a name such as Europe/Madrid, { $from } where it stands.
# As in English
zone-named = { $zone } ({ $from })
# As in English
zone-local = local
from-header = cabeçalho
from-units-row = linha de unidades
from-line-before = linha antes do cabeçalho
from-campaign-file = arquivo da campanha
from-site = local
order-only-days = a única ordem em que cada linha é um dia
# Of dates such as 10.06.2026, and of those such as 10/06/26.
order-points = os pontos separam dia, mês e ano
order-only-usual = a única ordem usual em que cada linha é um dia
order-first-row = a primeira linha
order-same-day = o mesmo dia em qualquer ordem
order-only-following = a única ordem em que os dias se seguem
order-run-date = a data da série
order-year-month-day = ano-mês-dia
order-day-month-year = dia-mês-ano
order-month-day-year = mês-dia-ano

# The figures: names of axes, keys, labels. None of them ends with a full stop.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = diferença de temperatura Td, água menos ambiente, { $unit }
# Upright, up to 45 letters.
figure-power = potência de cozimento padronizada Ps, W
figure-power-estimated = Ps, W, com irradiância estimada
# As in English
figure-power-short = Ps, W
figure-power-short-estimated = Ps estimada, W
# In an empty figure.
figure-no-interval = nenhum intervalo completo, por isso não há nada a mostrar
figure-nothing-to-plot = irradiância não medida, por isso não há nada a mostrar
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W a { $at }

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = diferença de temperatura Td, { $unit }
figure-start = hora local no início
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = quantil normal padrão
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps menos a reta, W
figure-band = reta com a sua banda, W
# A day in a key.
figure-day = { $day } de { $month }

## Figures: a run over the day

# Beside a curve.
figure-water = água
figure-ambient = ambiente
figure-aimed = reorientado
figure-boils = ferve a { $at }
figure-below-boiling = ebulição − { $margin }
figure-above-ambient = ambiente + { $margin }
figure-estimated = estimativa

# The comparison of several campaigns, in the order of its pages.
#
# { $first } and { $second } are campaigns by their titles, as the testers wrote them, such as
# "Box one, lid open"; where two have one title, with the folder's name in brackets behind it.
# Where there are many, campaigns are called by numbers (calls-numbers). The difference is that of
# the second from the first.

## Comparison: every page

comparison-kind = Comparação de fogões solares
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = { $cookers ->
        [one] { $campaigns } campanhas de um fogão
       *[other] { $campaigns } campanhas de { $cookers } fogões
    }
# { $sites }: a list of names of places, or comparison-sites. { $dates }: a date, or
# comparison-dates.
comparison-sites = { $count } locais
# In place of a long list of those who tested.
comparison-authors = { $count } operadores
comparison-statement = Os resultados referem-se apenas aos fogões tal como foram ensaiados. Reprodução permitida somente na íntegra.
# At the head of every page.
comparison-mark-mixed = Procedimentos ou limites diferentes
comparison-mark-not-valid = Em parte não válido
comparison-mark-indicative = Em parte indicativo
comparison-mark-invented = Dados inventados, para demonstração
comparison-end = Fim do relatório { $number }

## The web page that leads to the reports of several campaigns

# { $count }: how many reports it leads to.
index-title = { $count ->
    [one] Um relatório de ensaio de fogão solar
   *[other] { $count } relatórios de ensaio de fogões solares
}
index-subtitle = Escrito em { $date }
# { $name }: a campaign.
index-invented = { $name } (dados inventados)
index-some-invented = Parte dos dados é inventada, para demonstração
index-statement = Cada resultado refere-se apenas ao fogão tal como foi ensaiado.
index-no-rating = Nenhuma destas campanhas tem resultado.
# "compare" is a command.
index-order = A ordem é a dos números e não diz qual fogão é melhor: as campanhas podem diferir em lugar, tempo atmosférico, carga e instrumentos. O comando “simmerline compare” mostra se a diferença entre duas delas é real.
page-index-reports = Relatórios e dados
index-web-page = relatório
index-pdf = relatório em PDF
index-results = resultados como dados
index-intervals = tabela de intervalos
# { $names }: campaigns, with ";" between them.
index-failed = { $count ->
    [one] De uma campanha não se escreveu relatório
   *[other] De { $count } campanhas não se escreveu relatório
}: { $names }. O motivo foi mostrado no terminal.
index-caution = Superfícies quentes e vapor queimam, o foco pode cegar e provocar incêndios, e estes resultados nada dizem sobre a segurança dos alimentos. Leia os avisos de segurança no relatório antes de cozinhar. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.

## Comparison: what campaigns are called

# A campaign's title within a sentence.
# As in English
calls-name = “{ $name }”
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
verdict-power-indicative = { $power } (apenas indicativo)
verdict-title-only = Um só resultado válido: { $name }, { $power }
verdict-title-two = { $first } fornece { $difference } a mais que { $second }
verdict-title-two-alike = { $first } e { $second } não se distinguem
verdict-title-two-untold = Não se pode dizer qual fornece mais, { $first } ou { $second }
verdict-title-most = { $name } fornece mais: { $power }
# Some cannot be held against it; or none can.
verdict-title-most-told = { $name } fornece mais, entre as que podem ser comparadas: { $power }
verdict-title-alone = { $name } tem o resultado mais alto, { $power }, mas não pode ser comparada com as demais
verdict-title-leads-one = { $name } lidera com { $power }, mas não se distingue de { $second }
# { $others }: at least two.
verdict-title-leads = { $name } lidera com { $power }, mas outras { $others } não se distinguem dela
# { $second } gives more by the heat balances, which decide where irradiance differed.
verdict-title-beaten-by-one = { $name } tem o resultado mais alto, { $power }, mas com irradiância igual { $second } fornece mais
verdict-title-beaten = { $name } tem o resultado mais alto, { $power }, mas com irradiância igual outras { $others } fornecem mais
# Counts of those held against the baseline { $name }.
verdict-title-baseline = Em relação a { $name } ({ $power }), fornecem mais: { $more }; menos: { $less }; não se distinguem: { $alike }
verdict-baseline-unrated = { $name }, a referência, não tem um resultado válido, por isso nenhum resultado é comparado.
# Beside a large number, which is { $minuend } less { $subtrahend }.
verdict-lead = { $minuend } menos { $subtrahend }, Ps(50), com o seu intervalo de 95 %
verdict-lead-one-day = { $minuend } menos { $subtrahend }, Ps(50), com o seu intervalo; não foram ensaiadas em vários dias cada uma, por isso não é de 95 %
verdict-lead-common = { $minuend } menos { $subtrahend }, potência a 700 W/m² e 50 K pelos balanços térmicos, com o seu intervalo de 95 %
verdict-lead-common-one-day = { $minuend } menos { $subtrahend }, potência a 700 W/m² e 50 K pelos balanços térmicos, com o seu intervalo; não foram ensaiadas em vários dias cada uma, por isso não é de 95 %
# { $pairs }: at least two.
verdict-in-all = Pares em que uma diferença está demonstrada: { $shown } de { $pairs }.
verdict-in-all-compared = Pares em que uma diferença está demonstrada: { $shown } de { $compared } que podem ser comparados ({ $pairs } ao todo).
verdict-untold-pairs = { $pairs ->
        [one] Um par não pode ser comparado
       *[other] { $pairs } pares não podem ser comparados
    }: a irradiância média diferiu, e não há balanço térmico das duas campanhas.
verdict-untold-pairs-planes = { $pairs ->
        [one] Um par não pode ser comparado
       *[other] { $pairs } pares não podem ser comparados
    }: a irradiância de uma está em outro plano que a da outra.

## Comparison: the ranking
#
# Above its plot; then the headers of its columns, which have little room.

ranking-axis = Ps(50), W, com o seu intervalo de 95 %
ranking-axis-one-day = Ps(50), W, com o seu intervalo
page-ranking-campaign = campanha
# Over letters of groups, of which two campaigns that cannot be told apart have one in common.
page-ranking-groups = não se distinguem
# On a terminal: a difference with its interval and what it is of.
# As in English
terminal-lead = { $value } W ({ $interval } W): { $label }
# A header, over ranks.
terminal-rank = nº
# Over cells such as "0.94 · 45 · 4", in two lines.
ranking-rests-on = R², intervalos, dias
# For each square metre of intercept area, as the campaign files state it.
# As in English
ranking-per-area = W/m²
# { $currency }: as the tester wrote it.
# As in English
ranking-per-currency = W/{ $currency }
ranking-per-cost = W por unidade de custo
# Headers of a column of differences.
ranking-from-first = nº 1 menos esta, W
ranking-from-baseline = da referência, W
# Below the ranking.
# What a pair that is shown to differ holds for; with several pairs for all of them.
pairs-together = { $pairs ->
    [one] 95 %
   *[other] 95 % para todos os { $pairs } pares comparáveis juntos, Holm
}
pairs-note-alone = Um intervalo é só do seu par; o que se demonstra vale para todos os pares juntos: uma diferença cujo intervalo não inclui zero pode não estar demonstrada.
ranking-note-brackets = Uma barra une campanhas que não se distinguem ({ pairs-together }); duas sem barra em comum diferem.
ranking-note-brackets-dash = Uma barra une campanhas que não se distinguem ({ pairs-together }); duas sem barra em comum diferem, a menos que uma tenha um traço.
# The same where letters stand in place of bars: on a web page and a terminal.
ranking-note-letters = Campanhas com uma letra em comum não se distinguem ({ pairs-together }); duas sem letra em comum diferem.
ranking-note-letters-dash = Campanhas com uma letra em comum não se distinguem ({ pairs-together }); duas sem letra em comum diferem, a menos que uma tenha um traço.
ranking-note-all-apart = Todas se distinguem ({ pairs-together }).
# Where some have a dash in place of letters.
ranking-note-rest-apart = Todas as que não têm traço se distinguem ({ pairs-together }).
# Below the ranking, a list says of each rank from which others it cannot be told apart.
ranking-note-alike = Abaixo está de quais outras cada campanha não se distingue ({ pairs-together }).
# The same where numbers stand in the ranking itself.
ranking-note-alike-beside = “{ page-ranking-groups }”: os números das campanhas das quais cada uma não se distingue ({ pairs-together }).
# These two follow one of the above.
ranking-note-undecided = Duas que não podem ser comparadas contam como não distinguidas.
ranking-note-one-day = Duas que não foram ensaiadas em vários dias cada uma contam como não distinguidas, por mais que difiram.
ranking-note-dash = Um traço: não pode ser comparada com nenhuma outra, ou apenas com outras que têm um traço.
ranking-note-not-held = Um traço no lugar de uma barra: não pode ser comparada com nenhuma outra, ou apenas com outras que têm um traço.
ranking-note-not-held-letters = Um traço no lugar de letras: não pode ser comparada com nenhuma outra, ou apenas com outras que têm um traço.
ranking-note-differences = Diferenças com os seus intervalos de 95 %. Negrito: demonstrada ({ pairs-together }). Cinza: não demonstrada.
ranking-note-differences-one-day = Diferenças com os seus intervalos, de 95 % salvo os marcados com †. Negrito: demonstrada ({ pairs-together }). Cinza: não demonstrada.
# On a terminal, which has no bold type.
terminal-note-differences = Diferenças com os seus intervalos de 95 %. Com um ponto de interrogação antes: não demonstrada ({ pairs-together }).
terminal-note-differences-one-day = Diferenças com os seus intervalos, de 95 % salvo os marcados com †. Com um ponto de interrogação antes: não demonstrada ({ pairs-together }).
ranking-note-common = *: a irradiância média diferiu, por isso a diferença é a das potências a 700 W/m² e 50 K pelos balanços térmicos.
ranking-note-data = Todos os pares estão no arquivo de dados.
page-ranking-continued = continuação
# Read out where a campaign has no bar.
page-ranking-alone = distingue-se de todas as outras com que pode ser comparada
# Read out to those who do not see the plot.
ranking-alt = { $power } W, intervalo de 95 % { $range } W
ranking-alt-one-day = { $power } W, intervalo sem os dias { $range } W
# What the marks of the plot mean.
ranking-key-filled = Cheio: conforme.
ranking-key-open = Vazado: apenas indicativo.
ranking-key-struck = Riscado: fisicamente impossível, sem posição.
ranking-key-arrow = Seta: o intervalo continua além do eixo.
ranking-key-one-day = Os intervalos são de 95 %, salvo onde está escrito “{ status-one-day }”.
# { $names }: campaigns, with ";" between them.
ranking-left-out = Sem resultado: { $names }.
# { $level }: one of those that begin with ratings-; { $reasons }: some of the next, in two or
# three words each.
# As in English
status-for = { $level }: { $reasons }
status-one-day = dias fora do ±
status-too-few-intervals = intervalos de menos
status-too-few-days = dias de menos
status-r-squared-low = R² baixo
status-line-not-falling = potência não diminui quando a água aquece
status-no-useful-heat = sem calor útil a 50 K
status-extrapolated = 50 K não observado
status-load-off = outra carga
status-wind-not-measured = vento não medido
status-wind-estimated = vento estimado a olho
status-flat = sensor de irradiância na horizontal
status-irradiance-missing = falta irradiância em algumas séries
status-plane-not-stated = plano da irradiância sem indicação
status-impossible-gain = mais calor que energia solar
status-own-limits-looser = limites menos rigorosos
status-own-limits-tighter = limites mais rigorosos
status-excluded = trecho excluído pelo operador

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } a { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = Os resultados de { $second } e { $first } diferem em { $difference } W ({ $interval } W), mas { $second } foi ensaiada com { $second_sun } W/m² e { $first } com { $first_sun } W/m², e um resultado escala as perdas com o sol: por si sós, os resultados não mostram se os fogões diferem.
# In place of all that follows up to verdict-untold, where the plane of irradiance differs.
verdict-planes = Os resultados de { $second } e { $first } diferem em { $difference } W ({ $interval } W), mas a irradiância de uma campanha está em outro plano que a da outra, por isso não se pode dizer se os fogões diferem.
# The sentence that follows is of that.
verdict-common = O que segue se refere às potências a 700 W/m² e 50 K, pelos balanços térmicos.
verdict-untold = Sem um balanço térmico das duas, não se pode dizer se os fogões diferem.
# The sentence that follows is of that.
verdict-shown-more = { $second } fornece { $difference } W a mais que { $first } ({ $interval } W): uma diferença real.
verdict-shown-less = { $second } fornece { $difference } W a menos que { $first } ({ $interval } W): uma diferença real.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } fornece { $difference } W a mais que { $first } ({ $interval } W), { $share } %: uma diferença real.
verdict-shown-less-share = { $second } fornece { $difference } W a menos que { $first } ({ $interval } W), { $share } %: uma diferença real.
verdict-one-day-more = { $second } forneceu { $difference } W a mais que { $first } ({ $interval } W) quando ensaiada, mas não em vários dias cada uma, de modo que os dias, por si só, podem explicar a diferença: ensaie as duas de novo em outros dias.
verdict-one-day-less = { $second } forneceu { $difference } W a menos que { $first } ({ $interval } W) quando ensaiada, mas não em vários dias cada uma, de modo que os dias, por si só, podem explicar a diferença: ensaie as duas de novo em outros dias.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = { $second } fornece { $difference } W a mais que { $first } ({ $interval } W), mas entre { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    } uma diferença desse tamanho também ocorre por acaso: não fica demonstrada.
verdict-by-chance-less = { $second } fornece { $difference } W a menos que { $first } ({ $interval } W), mas entre { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    } uma diferença desse tamanho também ocorre por acaso: não fica demonstrada.
# One of the sentences that begin with needed- may follow.
verdict-not-shown-even = Não se pôde demonstrar diferença entre { $second } e { $first }. { $second } menos { $first }: qualquer valor de { $interval } W é compatível com os dados.
verdict-not-shown-more = Não se pôde demonstrar diferença entre { $second } e { $first }: { $difference } W a mais, e qualquer valor de { $interval } W é compatível com os dados.
verdict-not-shown-less = Não se pôde demonstrar diferença entre { $second } e { $first }: { $difference } W a menos, e qualquer valor de { $interval } W é compatível com os dados.
# "One" is a difference, in the next three.
needed-other-days = Ensaie as duas de novo em outros dias.
# Before one of those that begin with needed-; "one" there is a difference of these two.
needed-of = Entre “{ $first }” e “{ $second }”:
needed-none = Uma diferença de { $sought } W (um décimo da maior potência) teria sido vista, muito provavelmente.
needed-days = Com { $days ->
        [one] mais { $days } dia
       *[other] mais { $days } dias
    } como os ensaiados, de cada uma, muito provavelmente se veria uma diferença de { $sought } W (um décimo da maior potência).
needed-no-number = Só com mais dias dificilmente se veria uma diferença de { $sought } W (um décimo da maior potência): os dias, ou os instrumentos que não são os mesmos pelo id, diferem demais.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = Sem um balanço térmico das duas campanhas não se pode dizer de onde vem uma diferença.
cause-untold-planes = Não se pode dizer de onde vem uma diferença, pois ganhos com irradiância em planos diferentes não podem ser comparados.
# The next six are followed by cause-numbers.
cause-no-difference = Como nenhuma diferença é demonstrada, nenhuma causa é nomeada.
cause-not-shown = Não fica demonstrado de onde vem a diferença.
cause-more-gain = { $second } capta mais energia solar que { $first }, como após uma mudança na óptica.
cause-less-gain = { $second } capta menos energia solar que { $first }, como após uma mudança na óptica.
cause-more-loss = { $second } perde mais calor por kelvin que { $first }, como com pior isolamento, mais vento ou sem tampa.
cause-less-loss = { $second } perde menos calor por kelvin que { $first }, como com melhor isolamento, menos vento ou com tampa.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } menos { $first } pelos balanços térmicos: ganho { $gain } m² ({ $gain_interval } m²), perda { $loss } W/K ({ $loss_interval } W/K).
# In a cell of the matrix, where the difference is real: what it comes from.
matrix-gain = ganho
matrix-loss = perda
matrix-both = ganho, perda

## Comparison: the matrix of differences

matrix-title = Diferenças: linha menos coluna, W
# Read out in place of a cell. { $verdict }: difference-real or difference-not-shown.
# As in English
matrix-alt = { $value } W, { $interval } W, { $verdict }
matrix-untold = não se pode dizer
matrix-note = Ps(50), com intervalos de 95 %. Negrito: a diferença está demonstrada ({ pairs-together }). Cinza: não está.
matrix-note-one-day = Ps(50), com intervalos, de 95 % salvo os marcados com †. Negrito: a diferença está demonstrada ({ pairs-together }). Cinza: não está.
# † stands before it.
matrix-note-of-one-day = Não foram ensaiadas em vários dias cada uma: o intervalo não é de 95 %, e nenhuma diferença fica demonstrada.
# A star stands before it.
matrix-note-common = A irradiância média difere em mais de { $percent } %: a diferença é a das potências a 700 W/m² e 50 K pelos balanços térmicos.
matrix-note-untold = –: não se pode dizer: a irradiância média diferiu, e não há balanço térmico das duas campanhas.
matrix-note-untold-planes = –: não se pode dizer: a irradiância de uma está em outro plano que a da outra.
matrix-note-untold-either = –: não se pode dizer: a irradiância de uma está em outro plano que a da outra, ou a sua média diferiu e não há balanço térmico das duas campanhas.
matrix-note-cause = Ganho, perda: de onde vem a diferença, até onde os balanços térmicos o mostram: energia solar captada, calor perdido.

## Comparison: lines and heating times

section-lines = Potência em função da diferença de temperatura
lines-caption = Potência de cozimento padronizada Ps, em W, em função da temperatura da água acima do ar, em K. Em preto: a campanha indicada acima do painel, os seus intervalos usados, a sua reta sobre as diferenças observadas com uma banda de 95 % de dispersão, dias e instrumentos, e o seu resultado a 50 K. Em cinza: as outras. Os erros que as campanhas têm em comum estão em cada banda, mas se anulam em uma diferença.
lines-caption-one-day = Potência de cozimento padronizada Ps, em W, em função da temperatura da água acima do ar, em K. Em preto: a campanha indicada acima do painel, os seus intervalos usados, a sua reta sobre as diferenças observadas com uma banda de dispersão, dias e instrumentos (de 95 %; de um só dia, sem os dias e não de 95 %), e o seu resultado a 50 K. Em cinza: as outras. Os erros que as campanhas têm em comum estão em cada banda, mas se anulam em uma diferença.
# Read out to those who do not see the panel.
lines-alt = Reta Ps = { $intercept } W { $slope } W/K · Td; a 50 K { $power } W, intervalo de 95 % { $range } W
lines-alt-one-day = Reta Ps = { $intercept } W { $slope } W/K · Td; a 50 K { $power } W, intervalo sem os dias { $range } W
# { $shown }: those with most power.
comparison-first-only = Mostram-se as primeiras { $shown } de { $campaigns } campanhas; todas estão no arquivo de dados.
section-heating = Tempos de aquecimento
heating-title = { $load } de água de { $start } a { $target } com { $irradiance } W/m²
heating-note = Pelo balanço térmico de cada campanha com { $irradiance } W/m², em ar a { $ambient } para todas, com a sua faixa de 95 %; o calor da própria panela não é contado. Uma seta: a faixa continua além do eixo, ou a água pode não chegar lá.
heating-note-one-day = Pelo balanço térmico de cada campanha com { $irradiance } W/m², em ar a { $ambient } para todas, com a sua faixa (de 95 %, salvo se for de um só dia); o calor da própria panela não é contado. Uma seta: a faixa continua além do eixo, ou a água pode não chegar lá.

## Comparison: what a reader must know first

# "The first" is the campaign that was named first.
departure-procedure = procedimento { $here } onde a primeira tem { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = { $limit } { $here } onde a primeira tem { $there }
# The same on paper. { $limit }: one of those that begin with limit-. { $here }, { $there }: with
# their units, or departure-none.
departure-limit-said = { $limit } { $here } em vez de { $there }
departure-least-said = { $limit } no mínimo { $here }
departure-most-said = { $limit } no máximo { $here }
departure-none-said = sem limite para { $limit }
departure-procedure-said = procedimento { $here } em vez de { $there }
departure-guard-said = limites com banda de guarda
departure-no-guard-said = limites sem banda de guarda
departure-none = nenhum
# What a reader must know first: a label, and what is said. { $campaigns }: one or two titles, or
# calls-numbers.
page-caveats = Antes de confiar nisto
caveat-not-valid = Não válido
caveat-not-valid-text = { $campaigns }: a água ganharia mais calor que a energia solar que incide no fogão. Verifique a área de captação, a carga e as unidades. Sem posição, e nenhuma diferença de resultados é dada.
caveat-no-rating = Sem resultado
caveat-no-rating-text = { $campaigns }: só se podem comparar os outros números.
caveat-indicative = Apenas indicativo
caveat-indicative-text = { $campaigns }. Uma diferença de tal campanha não é mais confiável que o resultado dela.
caveat-few-days = Poucos dias
caveat-few-days-text = { $campaigns }: intervalos usados de um ou dois dias, por isso mal se sabe quanto os dias diferem.
caveat-limits = Limites
# { $first }: calls-name of the campaign that was named first. caveat-limits-one of the others
# follow.
caveat-limits-text = Não avaliadas com os mesmos limites que { $first }, e comparadas mesmo assim.
# { $departures }: some of departure-…-said, with ";" between them.
# As in English
caveat-limits-one = { $campaigns }: { $departures }.
caveat-irradiance = Irradiância
# { $ways }: some of caveat-irradiance-one, or one caveat-irradiance-all, with ";" between them.
caveat-irradiance-text = Não medida do mesmo modo: { $ways }.
# Follows it.
caveat-irradiance-uncovered = As incertezas não cobrem aqui um sensor na horizontal ou um plano não indicado.
caveat-irradiance-same = De todas as campanhas: { $ways }.
# { $way }: one of the next four.
# As in English
caveat-irradiance-one = { $way }: { $campaigns }
# As in English
caveat-irradiance-all = { $way }
caveat-way-normal = sensor de frente para o sol
caveat-way-flat = sensor na horizontal
caveat-way-not-stated = plano sem indicação, suposto de frente para o sol
caveat-way-estimated = estimada { $way }
# { $name }: a place or a person.
# As in English
caveat-group = { $name }: { $campaigns }
caveat-sites = Locais
caveat-sites-text = { $sites }. Céu, ar e vento não foram os mesmos.
caveat-testers = Operadores
# As in English
caveat-testers-text = { $testers }.
caveat-sensors = Sensores
caveat-sensors-none = Não há duas campanhas que deem um mesmo id ao sensor de irradiância: nenhum erro dos sensores de irradiância se anula em uma diferença.
# { $groups }: some of calls-numbers, with ";" between them.
caveat-sensors-text = O mesmo sensor de irradiância, pelo id: { $groups }. Em todas as outras diferenças, nenhum erro dos sensores de irradiância se anula.
# Follows either of the two, where irradiance was estimated.
caveat-sensors-one-sky = O erro das estimativas feitas do mesmo modo, no mesmo local e nos mesmos dias, se anula mesmo assim.

## Comparison: the figure


## Comparison: tables of page one

# Means over the used intervals.
ratings-conforms = conforme
ratings-conforms-with-notes = conforme com notas
ratings-indicative = apenas indicativo
ratings-not-valid = não válido
ratings-no-rating = sem resultado
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
# As in English
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
# As in English
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – nunca)
heating-never = não chega lá

## Comparison: caution on page one

caution-compared = As superfícies quentes e o vapor queimam, o foco pode cegar e provocar incêndios, e estes resultados nada dizem sobre a segurança dos alimentos. Leia os avisos de segurança na seção { $section } antes de cozinhar. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.

## Comparison: differences

section-differences = A diferença, e em que se baseia
# Labels, with little room.
difference-verdict = diferença
# As in English
difference-p = p
difference-method = dispersão e dias
# A difference with its 95 % interval, in watts.
# As in English
difference-with-interval = { $difference } (95 %: { $interval })
difference-with-interval-one-day = { $difference } (não 95 %: { $interval })
# Whether the difference is real.
difference-apart = cada uma pelos seus dias
difference-paired = dia a dia, { $days ->
        [one] { $days } dia
       *[other] { $days } dias
    }
# As in English
difference-real = real
difference-not-shown = não demonstrada
# In place of real and not shown, where irradiance differed.
difference-scaled = sóis diferentes
# The same where the plane of irradiance differed.
difference-planes = planos diferentes
# As in English
difference-of-ratings = Ps(50)
difference-of-common = potência a 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = Incerteza da diferença: { $figure }
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
page-comparison-source = fonte
page-comparison-shared = na diferença
page-comparison-apart = se nada fosse comum
pair-budget-scatter = dispersão e dias
pair-budget-combined = combinada
pair-budget-expanded = expandida, 95 %, k = { $factor }
pair-budget-expanded-one-day = expandida, sem os dias e não de 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = As campanhas
page-campaigns-alike = Igual em todas as campanhas
campaigns-type = tipo
campaigns-tests = Fogões e ensaios
campaigns-area = área de captação
campaigns-mass = massa
campaigns-cost = custo
campaigns-dates = ensaiado
campaigns-runs = séries
campaigns-place = local
campaigns-tester = operador
campaigns-report = relatório
campaigns-results = Retas, balanços térmicos, condições
# a and b are symbols; Ps and Td too.
campaigns-line = Reta Ps = a − b·Td
# As in English
campaigns-intercept = a, W
# As in English
campaigns-slope = b, W/K
campaigns-range = de – a
# As in English
campaigns-r-squared = R²
campaigns-intervals = intervalos
campaigns-days = dias
campaigns-balance = Balanço térmico, com ±
campaigns-gain = ganho, m²
campaigns-loss = perda, W/K
campaigns-power = W a 700 W/m², 50 K
campaigns-around = Médias dos intervalos usados
# As in English
campaigns-sun = W/m²
campaigns-air = ar
campaigns-wind = vento
# Below or in place of a table of instruments.
campaigns-instruments-described = Cada linha é uma descrição, que pode servir a vários instrumentos: só com um id entre parênteses é um e o mesmo em todas as suas campanhas.
campaigns-instruments-many = { $count } instrumentos ao todo: cada um consta do relatório da sua campanha.
campaigns-all = Todas
comparison-not-stated = sem indicação

## Comparison: method and provenance

section-method = Método e proveniência
page-comparison-made-with = Feito com
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 para cada resultado; JCGM 100:2008 para as diferenças
comparison-note-ratings = Cada resultado é o da norma: Ps(50), lido da reta em Td = 50 K. Ele escala a potência proporcionalmente para 700 W/m², as perdas também. Onde a irradiância média dos dois ensaios é semelhante, a diferença chamada de real ou não demonstrada é a dos resultados.
comparison-note-suns = Onde a irradiância média difere em mais de { $percent } %, é a diferença das potências a 700 W/m² e 50 K pelos balanços térmicos. Um balanço térmico é P = g·G − u·Td, ajustado a todos os intervalos com leituras confiáveis. Ele supõe que o ganho g e a perda u são os mesmos sob os dois sóis; o vento não é corrigido.
comparison-note-planes = Onde a irradiância de uma campanha está em outro plano que a da outra, nenhuma diferença é chamada de real ou não demonstrada: nem os resultados nem os ganhos por W/m² são então comparáveis.
comparison-note-uncertainty = A incerteza de uma diferença inclui a dispersão e os dias das duas campanhas, cada uma omitindo um dia de cada vez, e o que os seus instrumentos não têm em comum. Um instrumento é o mesmo onde os arquivos das campanhas dão o mesmo id; os que não têm id contam como diferentes, o que aumenta a incerteza. O erro de uma estimativa da irradiância é um só onde as duas foram estimadas do mesmo modo, no mesmo local e nos mesmos dias. O calor específico é comum a todas.
comparison-note-paired = Onde as duas foram ensaiadas nos mesmos dias em um mesmo local, em três dias ou mais, omite-se cada dia das duas ao mesmo tempo, para que se anule o que um dia faz às duas: aqui em { $paired } de { $pairs ->
        [one] { $pairs } par
       *[other] { $pairs } pares
    }.
comparison-note-p = p é a probabilidade de uma diferença tão grande se não houver nenhuma (t de Student, Cochran & Cox); o p corrigido leva em conta { $pairs ->
        [one] { $pairs } par que pode ser comparado
       *[other] { $pairs } pares que podem ser comparados
    } pelo método de Holm. Os dois são da diferença que decide: a dos resultados, ou a das potências a 700 W/m². Uma diferença é chamada de real onde o p corrigido é menor que 0,05 e as duas foram ensaiadas em vários dias.
comparison-note-groups = Campanhas que não se distinguem não são necessariamente iguais: a primeira pode não se distinguir da segunda e a segunda da terceira, enquanto a primeira e a terceira diferem. Os grupos são os da representação compacta por letras (Piepho 2004, Journal of Computational and Graphical Statistics 13, 456–466): das campanhas que podem ser comparadas entre si, diretamente ou por meio de outras, duas têm um em comum exatamente quando não se distinguem, não podem ser comparadas ou não foram ensaiadas em vários dias cada uma.
comparison-note-causes = As causas decorrem das diferenças de g e de u, cada uma com dispersão, dias e instrumentos. Uma causa é nomeada onde uma diferença é real e o p de g ou de u é menor que 0,05; estes p não são corrigidos para o número de pares.
comparison-note-needed = Dias ainda necessários: para uma probabilidade de quatro em cinco de demonstrar uma diferença desse tamanho a 95 %, se os dias e a dispersão continuarem como foram observados.
comparison-note-reports = Cada resultado tem o seu próprio relatório, com as suas leituras, condições e balanço de incerteza.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
plan-day = { $weekday }, { $date }
# On the terminal; { $day }: plan-day, { $title }: the campaign's.
# As in English
plan-title = { $day }: { $title }
plan-title-none = { $day }: nenhuma hora deste dia pode ser usada, por isso não há folha de campo. { $title }
# Labels of lines on the terminal, and headers of its table of the sun: there is little room.
plan-run = série
plan-lacks = falta
plan-place = local
plan-place-text = { $site }, relógio de { $zone }
plan-elevation = altura, °
plan-azimuth = azimute, °
# As in English
plan-normal = normal, W/m²
# As in English
plan-horizontal = horizontal, W/m²
# As in English
plan-range = 95 %, { $unit }
plan-range-one-day = faixa, { $unit }
plan-power = potência, W
plan-not-rated = planejado como para um primeiro dia, pois os registros ainda não dão resultado
weekday-1 = segunda-feira
weekday-2 = terça-feira
weekday-3 = quarta-feira
weekday-4 = quinta-feira
weekday-5 = sexta-feira
weekday-6 = sábado
weekday-7 = domingo
# { $zone }: the name of a time zone, such as Europe/Madrid.
sheet-subtitle = { $day } · { $site } · relógio de { $zone }
sheet-mark = Dados inventados, para demonstração

## Field sheet: sun, water, aiming
#
# What stands at the left has room for 13 letters, else it goes onto two lines.

plan-sun = sol
plan-sun-course = nasce às { $rise }, meio-dia solar às { $noon }, põe-se às { $set }
plan-sun-no-rise = não nasce, meio-dia solar às { $noon }, põe-se às { $set }
plan-sun-no-set = nasce às { $rise }, meio-dia solar às { $noon }, não se põe
plan-sun-neither = não nasce, meio-dia solar às { $noon }, não se põe
plan-sun-always = não se põe; meio-dia solar às { $noon }
plan-sun-never = não nasce
# The hours about noon in which the practice lets one test.
plan-window = janela solar
plan-window-text = { $clocks } pelo relógio ({ $from } a { $to } em hora solar)
# Two times of day.
plan-clocks = { $from } a { $to }
plan-clear-sky = céu limpo
# plan-too-much may follow, after a semicolon.
plan-enough-all-through = { $least } W/m² ou mais no plano normal à radiação direta de { $clocks }, portanto durante toda a janela solar
plan-enough-in-window = { $least } W/m² ou mais no plano normal à radiação direta de { $clocks }, dentro da janela solar de { $usable }
plan-too-much = acima de { $most } W/m² os intervalos também são descartados, e um céu muito limpo aqui dá até { $highest }
plan-enough-outside = { $least } W/m² só de { $clocks }, fora da janela solar: nenhum intervalo deste dia pode ser usado
plan-never-enough = nunca chega a { $least } W/m² (no máximo { $highest }): nenhum intervalo deste dia pode ser usado
plan-water = água
# { $load }, { $each }, { $vessel }: masses with their unit. plan-load-stated may follow, after
# a semicolon.
plan-load-one = { $load }: { $each } por m² de área de captação ({ $area }), em um só recipiente
plan-load-several = { $load }: { $each } por m² de área de captação ({ $area }), { $vessel } em cada um de { $vessels } recipientes
plan-load-stated = o arquivo da campanha diz { $stated }
# From and up to which temperature of the water its readings count.
plan-start = conta desde
plan-start-above = { $difference } acima do ar, por exemplo { $start } com o ar a { $air }
plan-stop = conta até
plan-stop-text = { $stop }; a água ferve a { $boiling } aqui
# In the unit of the tester's thermometer, with °C or K in brackets.
# As in English
plan-temperature = { $temperature } { $unit } ({ $celsius } °C)
# As in English
plan-difference = { $difference } { $unit } ({ $kelvin } K)
# A run of the dry vessel, or of a load that cools: when it begins, what is read, when it ends.
plan-begin = começar
plan-read = ler
plan-end = terminar
plan-high-sun = sol alto
# { $clocks }: two times of day. { $from }, { $to }: the same by the sun.
plan-high-sun-text = { $clocks } pelo relógio ({ $from } a { $to } em hora solar), quando o sol está alto e muda menos; prática comum, sem fonte publicada
plan-high-sun-most = até { $highest } W/m² no plano normal à radiação direta
plan-high-sun-weak = no máximo { $highest } W/m² no plano normal à radiação direta: um patamar só vale acima de { $least } W/m², por isso escolha outro dia para ele
plan-high-sun-none = no máximo { $highest } W/m² no plano normal à radiação direta: nenhuma hora deste dia serve
plan-dry-begin = com o recipiente vazio e seco, tão frio quanto o ar, com a tampa colocada, e o fogão orientado
plan-dry-read = o recipiente a cada 5 a 20 min, o ar pelo menos a cada duas leituras, até o recipiente ficar meia hora sem mudar; por uma hora com um termômetro de ponteiro de 10 °F ou 5 °C por divisão
plan-dry-read-sun = o recipiente e a irradiância a cada 5 a 20 min, o ar pelo menos a cada duas leituras, até o recipiente ficar meia hora sem mudar; por uma hora com um termômetro de ponteiro de 10 °F ou 5 °C por divisão
plan-cooling-load = tanta quanto nas séries de aquecimento, { $load }
plan-cooling-load-unstated = tanta quanto nas séries de aquecimento; pese-a
plan-cooling-begin = com a água perto de ferver (aqui ferve a { $boiling }), a tampa colocada, o fogão à sombra ou virado para longe do sol
plan-cooling-read = a água a cada { $minutes } min, o ar pelo menos a cada duas leituras; a irradiância não é necessária
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = quando a água estiver { $difference } acima do ar, por exemplo { $end } com o ar a { $air }
# To turn the cooker to the sun.
plan-aim = orientar
plan-aim-unknown = o semiângulo de aceitação não está indicado, por isso não se dão horas. Prática comum, sem fonte publicada: um refletor raso de muitas faces a cada 45 minutos mais ou menos, em que o sol se move cerca de 11°, um refletor parabólico de foco nítido a cada 10 a 15.
plan-aim-no-time = nenhuma hora deste dia pode ser usada
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = só às { $clocks }: { $angle }° bastam para toda a janela
plan-aim-drive = o tempo todo, por um motor: o sol se move { $angle }° em menos de { $time }
plan-aim-at = às { $clocks }; o sol se move { $angle }°, o semiângulo de aceitação, nesse tempo ({ $minutes } min)
plan-aim-every = a cada { $minutes } min a partir das { $first }; o sol se move { $angle }°, o semiângulo de aceitação, nesse tempo
plan-aim-shown = { $when }. O ângulo não está indicado: é o extremo inferior do que as séries mostram até agora, { $shown }

## Field sheet: what is missing

# Two of these follow each other. { $missing }: "9 more intervals and 1 more day".
plan-missing = Ainda falta: { $missing }.
plan-missing-nothing = Já há intervalos e dias suficientes.
plan-gives-none = Este dia não pode dar nenhum.
plan-gives = Este dia pode dar no máximo { $most ->
        [one] { $most } intervalo de { $minutes } min
       *[other] { $most } intervalos de { $minutes } min
    }.
plan-gives-by-heating = Este dia pode dar no máximo { $most ->
        [one] { $most } intervalo de { $minutes } min
       *[other] { $most } intervalos de { $minutes } min
    }; um aquecimento desta carga dá cerca de { $heating }, depois recomece com água nova.

## Field sheet: before the first reading

check-shade = nenhuma sombra sobre o fogão até o fim
check-wind = vento fraco: a fumaça se desvia, as folhas estão quietas
check-weighed = água pesada, não medida com copo
check-sensor = sensor na água, 10 mm acima do fundo, sem tocar na parede
check-lid = tampa colocada, e fica colocada
check-air = termômetro do ar à sombra, fora da luz do fogão
check-irradiance = sensor de irradiância limpo e virado para o sol
check-irradiance-flat = sensor de irradiância limpo e deitado na horizontal, ao lado do fogão
check-aimed = fogão orientado, e nada que pegue fogo perto do foco
check-empty = recipiente vazio, seco e limpo: sem água, comida nem gordura
check-no-plastic = sem plástico nem revestimento antiaderente: passa muito de 100 °C
check-dial = termômetro dentro do recipiente ou sobre ele, fora do feixe; fica ali
check-mirrors = espelhos da caixa cobertos ou dobrados, para as suas figuras de mérito
check-no-sun = nenhum sol sobre o fogão até o fim: à sombra ou virado para longe
check-in-place = panela no seu lugar no fogão, como quando aquece
# Lines to write on.
sheet-tester = operador
sheet-weighed = massa de água na balança, { $unit }
sheet-began = primeira leitura, hora

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = hora
sheet-after = minutos
sheet-vessel = recipiente, { $unit }
sheet-water = água, { $unit }
sheet-air = ar, { $unit }
# Bft: Beaufort.
sheet-wind = vento, Bft
sheet-sky = céu: limpo ou nuvem
sheet-irradiance = irrad., W/m²
sheet-expected = esperada, { $unit }
sheet-aim = orientar
sheet-notes = notas

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Vento a olho, Beaufort (WMO-No. 8): { $forces }.
# As in English
sheet-force = { $number } { $sign } ({ $speeds })
# What one sees of the wind on land, at each number of the Beaufort scale.
wind-sign-0 = a fumaça sobe na vertical
wind-sign-1 = a fumaça se desvia, os cata-ventos ficam parados
wind-sign-2 = sente-se no rosto, ouvem-se as folhas
wind-sign-3 = folhas e galhinhos se movem sem parar
wind-sign-4 = levantam-se poeira e papéis soltos
wind-sign-5 = árvores pequenas balançam
wind-sign-6 = galhos grandes se movem
wind-sign-7 = árvores inteiras se movem
wind-sign-8 = quebram-se galhinhos
# What the column of expected temperatures rests on. { $start }, { $air }: temperatures.
# { $spread }: "95 %", or plan-spread-one-day.
plan-expected = Esperado do fogão segundo o resultado até agora, Ps(50) = { $power } W ± { $expanded } W ({ $spread }): { $load } aquecendo desde { $start } sob céu limpo, com o ar a { $air } como nos seus ensaios; com a sua faixa. Água bem abaixo disso indica névoa, vento, má orientação ou tampa solta.
# As in English
plan-spread = 95 %
plan-spread-one-day = não é 95 %
# The models behind the numbers.
plan-models = Céu limpo segundo Ineichen e Perez 2002 para { $elevation }, turbidez de Linke { $turbidity } (habitual para céu limpo); névoa e poeira dão menos. Sol segundo NREL/TP-560-34302; horizonte plano.
plan-models-stated = Céu limpo segundo Ineichen e Perez 2002 para { $elevation }, turbidez de Linke { $turbidity } (como indicada); névoa e poeira dão menos. Sol segundo NREL/TP-560-34302; horizonte plano.
page-sheet-checks = Antes da primeira leitura
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = O que anotar a cada hora
page-sheet-caution = Cuidado.
caution-field-sheet = Nunca olhe para o foco nem para o sol. O metal quente e o vapor queimam: luvas, tampa para o lado oposto a você. Mantenha longe as crianças e tudo o que pega fogo; fique junto do fogão; vire-o para longe do sol antes de pôr as mãos nele; amarre-o contra o vento. Sombra e água para você. Jogue fora a água do ensaio. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = Um recipiente seco passa muito de 100 °C: queima ao toque e fica quente por muito tempo. O plástico derrete e os revestimentos soltam gases e fumaça: não use nenhum dos dois. Nunca jogue água nele enquanto está quente: espirra e racha. Capim seco, pano e restos de gordura no chão pegam fogo: chão nu, água ou areia à mão, e alguém que fique. Nunca olhe para o foco nem para o sol; vire o fogão para longe dele antes de pôr as mãos nele; luvas secas. Mantenha longe as crianças; amarre-o contra o vento. Sombra e água para você. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.
caution-field-sheet-cooling = Uma panela de água quase fervendo é carregada: caminho livre, ninguém nele, a tampa presa com a mão, as duas mãos com luvas secas; melhor deixá-la no chão do que se apressar. O vapor queima: tampa para o lado oposto a você. Nunca olhe para o foco nem para o sol; vire o fogão para longe dele, ou faça sombra sobre o fogão, antes de pôr as mãos nele, e veja para onde vai então o foco. Mantenha longe as crianças; fique junto do fogão. Jogue fora a água do ensaio. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.

## Kinds of run, and what vessels store

run-kind-water = aquecimento de água
run-kind-cooling = resfriamento, à sombra
run-kind-dry = recipiente seco
vessel-heat-stated = indicada no arquivo da campanha
vessel-heat-weighed = { $mass } de { $material } a { $heat } J/(kg K) (EN 12524:2000, tal como consta de uma biblioteca aberta)
material-aluminium = alumínio
material-cast-iron = ferro fundido
material-steel = aço
material-stainless-steel = aço inoxidável
material-copper = cobre
material-glass = vidro
material-ceramic = cerâmica
material-fired-clay = barro cozido
tested-vessel-heat = capacidade térmica dos recipientes
# As in English
tested-vessel-heat-text = { $heat } J/K: { $basis }
tested-loss-area = superfície dos recipientes que perde calor
# As in English
tested-no-water = nenhuma: nenhuma série desta campanha aquece água
tested-vessel-temperature = temperatura do recipiente
error-vessel-temperature = termômetro do recipiente
error-vessel-heat = capacidade térmica dos recipientes
known-vessel-heat = dentro de { $percent } % do valor indicado
budget-not-told-apart = sem detalhamento neste relatório
tested-instruments-note-dry = Incertezas-padrão (k = 1); de uma classe, os seus limites. Onde nenhuma das duas é indicada, supõe-se a classe mais cautelosa: um termômetro de forno de ponteiro dentro de ± 10 K para o recipiente (prática comum).

## Page one of a campaign that heats no water

report-kind-without-water = Relatório de ensaios de um fogão solar, sem resultado
headline-label-none = Ainda sem número
headline-no-water = Sem resultado pela ASAE S580.1: nenhuma série desta campanha aquece água.
headline-spread = Intervalo de 95 %: dias, leituras, instrumentos.
headline-spread-one-day = Intervalo sem os dias: leituras, instrumentos; não de 95 %.
headline-dry-plateau = Com { $irradiance } W/m², o recipiente seco chegou a { $vessel }: { $difference } acima do ar, que estava a { $ambient }.
fact-reached = Alcançou
fact-good-for = Serve para
fact-not-with = Não comparar com
headline-no-water-means = Nada disto é uma potência de cozimento. Aqueça uma carga de água pesada na balança para saber com que rapidez o fogão cozinha.
headline-nothing-drawn = Nada pôde ser desenhado: as deficiências dizem por quê.

## All figures at a glance (page two)

summary-title = Todos os números em resumo
# Headers of a table of four columns.
page-summary-figure = número
page-summary-value = valor ± meia largura
page-summary-good-for = serve para
page-summary-not-with = não comparar com
summary-one-day = (não 95 %)
summary-indicative = (indicativo)
summary-note = Cada ± é para 95 %: dias, leituras (com a sua dispersão onde se ajusta uma reta) e instrumentos, com a incerteza que está indicada ou suposta. As áreas contam como exatas.
# The same where figures without days are among them; the next message follows it.
summary-note-some = Cada ± é para 95 %, salvo onde está “não 95 %”: dias, leituras (com a sua dispersão onde se ajusta uma reta) e instrumentos, com a incerteza que está indicada ou suposta. As áreas contam como exatas.
summary-note-one-day = Onde está “não 95 %”, a variação entre dias não está no ±, que por isso não é de 95 %.
summary-note-indicative = Onde está “indicativo”, as condições do procedimento não foram cumpridas, ou a irradiância é estimada.
figure-ps50 = potência de cozimento padronizada
figure-ps50-good-for = comparar fogões avaliados pela mesma norma
figure-ps50-not-with = a potência com outra irradiância, ou resultados por outra norma
figure-gain = ganho do sol
figure-gain-good-for = calcular a potência a qualquer irradiância, junto com u
figure-gain-not-with = o ganho por um sensor em outro plano
figure-loss = perda para o ar
figure-loss-good-for = ver o que o isolamento faz
figure-loss-not-with = a perda com outro vento, ou por m²
figure-opto-thermal-ratio = razão optotérmica
figure-opto-thermal-ratio-good-for = saber até onde uma carga pode aquecer, seja qual for o seu tamanho
figure-opto-thermal-ratio-not-with = F1, que é do fogão vazio
figure-dry-difference = recipiente seco acima do ar, por W/m²
figure-dry-difference-good-for = comparar versões de um fogão com a mesma panela
figure-dry-difference-not-with = outras panelas, ou um sensor em outro plano; não é uma potência de cozimento
figure-f1 = primeira figura de mérito
figure-f1-good-for = comparar fogões de caixa, vazios
figure-f1-not-with = valores por um sensor virado para o sol, ou com os espelhos descobertos
figure-f2 = segunda figura de mérito
figure-f2-good-for = comparar fogões de caixa com carga completa
figure-f2-not-with = outras cargas, ou outros extremos da subida
figure-box-boiling = tempo do ambiente até ferver
figure-box-boiling-good-for = dizer quanto esta carga demora, com este sol
figure-box-boiling-not-with = tempos para outra carga, outro sol ou outra altitude
figure-time-constant = constante de tempo do resfriamento
figure-time-constant-good-for = saber quanto tempo esta carga fica quente à sombra
figure-time-constant-not-with = outras cargas: cresce com a água
figure-loss-factor = fator de perdas
figure-loss-factor-good-for = comparar recipientes e os seus envoltórios
figure-loss-factor-not-with = fatores de outra superfície, ou com outro vento
figure-optical-factor = fator óptico
figure-optical-factor-good-for = comparar espelhos e orientação
figure-optical-factor-not-with = fatores pela irradiância direta, onde esta é a global
figure-dish-boiling = tempo do ambiente até ferver
figure-dish-boiling-good-for = dizer quanto esta carga demora, com este sol
figure-dish-boiling-not-with = tempos para outra carga, outro sol ou outra altitude
figure-energy = eficiência energética
figure-energy-good-for = comparar ensaios na mesma faixa de temperaturas da água
figure-energy-not-with = a eficiência em outra faixa, ou com uma carga fria
figure-exergy = eficiência exergética
figure-exergy-good-for = o mesmo que a energética, mas a água quente conta mais
figure-exergy-not-with = valores com outra temperatura do sol ou outra faixa
figure-peak-exergy = exergia máxima
figure-peak-exergy-good-for = comparar fogões do mesmo tamanho sob o mesmo sol
figure-peak-exergy-not-with = máximos a outra irradiância
figure-quality-factor = fator de qualidade
figure-quality-factor-good-for = comparar ganho e perda no máximo
figure-quality-factor-not-with = artigos que definem a perda de outro modo

## Procedures beside the rating

# As in English
procedure-label = { $name }, { $symbol }
# { $value } with its ±, or alone; { $unit }, or nothing.
# As in English
procedure-value = { $value } { $unit }
# An interval that reaches further on one side.
procedure-value-between = { $value } ({ $lower } a { $upper })
procedure-value-alone = { $value } (± não é dado)
procedure-spread = ± de 95 %: dias, leituras, instrumentos
procedure-spread-one-day = ± sem os dias, não de 95 %: leituras, instrumentos
page-procedure-quantity = grandeza
procedure-boiling = O tempo até ferver é para { $load } de água de { $ambient } a { $boiling }, o seu ponto de ebulição aqui, com { $irradiance } W/m² constantes: as médias do ensaio. Foi calculado, não cronometrado.
# { $limit }, °C.
evaporation = acima de { $limit } parte do calor vai para o vapor, o que nenhuma temperatura mostra: os números valem para uma tampa fechada e contam o vapor como perda
evaporation-remedy = mantenha a tampa posta; compare só ensaios que terminem a temperaturas semelhantes

## Dry vessel

section-dry-vessel = Recipiente seco
dry-what = Um recipiente vazio e escuro, ou uma placa nua, fica ao sol até não aquecer mais. A sua temperatura acima do ar, por W/m², relaciona a energia captada com as perdas. Não é uma potência de cozimento.
dry-plane-normal = A irradiância é a de um sensor virado para o sol.
dry-plane-horizontal = A irradiância é a de um sensor deitado na horizontal: compare só com outros ensaios em que estava assim.
dry-plane-estimated = A irradiância é estimada.
dry-plane-not-stated = O plano do sensor de irradiância não está indicado: não compare com nenhum outro valor.
# { $runs }: more than one.
dry-mean-of = O valor é a média de { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
} com patamar.
# Headers of a table with a row a run: there is little room.
dry-head-run = série
dry-head-plateau = patamar, { $unit }
dry-head-ambient = ar, { $unit }
dry-head-irradiance = sol, W/m²
# As in English
dry-head-difference = K m²/W
dry-head-initial = subida inicial, K/min
dry-head-reached = min até { $level }
dry-caption = Temperatura do recipiente seco desde o início de cada série; traço grosso: o patamar.
dry-alt = Gráfico de linhas da temperatura do recipiente seco em função do tempo, de { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
}. A leitura mais alta é de { $highest }.
dry-axis-time = tempo desde a primeira leitura, min
dry-axis-vessel = recipiente, { $unit }
dry-key-vessel = leituras
dry-key-plateau = patamar
dry-source = Patamar, segundo a interpretação deste projeto: o trecho mais quente de pelo menos dez minutos, mais longo para um termômetro de divisões grossas, em que o recipiente sobe ou desce menos de 0,1 K/min, e o sol fica dentro de ± 20 W/m² e acima de 600 W/m². A razão é a que Mullick, Kandpal e Saxena 1987 usam para fogões de caixa. Subida inicial: nos primeiros dez minutos, ou nas duas primeiras leituras.
dry-no-vessel = o registro não tem a temperatura do recipiente
dry-no-vessel-remedy = indique a coluna do recipiente como vessel_temperature em [columns]; se o recipiente tinha água, escreva kind = "water"
dry-no-irradiance = o registro não tem irradiância, por isso o patamar não pode ser relacionado com ela
dry-no-irradiance-remedy = anote a irradiância com cada leitura, ou declare trechos sem nuvens e estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = as leituras que contam não cobrem { $minutes } min sem lacuna, o que um patamar pede com este termômetro
dry-too-short-remedy = continue lendo, pelo menos a cada vinte minutos, até a temperatura se manter por { $minutes } min
dry-sun-unsteady = o sol nunca ficou dentro de ± 20 W/m² da sua média durante { $minutes } min
dry-sun-unsteady-remedy = ensaie sob céu limpo em torno do meio-dia solar
dry-sun-weak = o sol estava constante, mas com { $highest } W/m² no máximo, abaixo de 600 W/m²
dry-sun-weak-remedy = ensaie em torno do meio-dia solar, em uma estação com mais sol, ou sem névoa
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = sem patamar: no seu trecho constante mais quente, a { $vessel }, o recipiente ainda subia { $rate } K/min
dry-still-falls = sem patamar: no seu trecho constante mais quente, a { $vessel }, o recipiente descia { $rate } K/min
dry-still-moves-remedy = comece mais cedo, oriente de novo e continue até que se mantenha

## Box cooker

section-box-cooker = Figuras de mérito de um fogão de caixa
box-what = F1 = (Tp − Ta)/H: quanto a caixa vazia sobe acima do ar por W/m² no plano horizontal. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))]: quão bem o seu calor passa para uma carga completa, pelo tempo τ em que a água sobe ΔT; T, Ta e H são médias desse tempo.
box-grade = grau
box-grade-a = A: toda a faixa de F1 está acima de { $limit } K m²/W (IS 13429)
box-grade-none = nenhum: a faixa de F1 não está toda acima de { $limit } K m²/W, o limite do grau A (IS 13429); graus inferiores não são avaliados
box-rests-on-dry = F1 baseia-se em { $runs ->
    [one] { $runs } série a seco
   *[other] { $runs } séries a seco
} com patamar.
box-rests-on-water = F2 baseia-se em { $runs ->
    [one] { $runs } subida
   *[other] { $runs } subidas
} da água de { $from } a { $to }.
box-caption = Água em função do tempo desde que passou a primeira temperatura da subida; traço grosso: o que F1 e F2 dão sob um sol constante da mesma média.
box-alt = Gráfico de linhas da temperatura da água em função do tempo, de { $runs ->
    [one] { $runs } subida
   *[other] { $runs } subidas
} de { $from } a { $to }, com as curvas que F1 e F2 dão.
box-axis-time = tempo desde o início da subida, min
box-axis-water = água, { $unit }
box-key-water = leituras
box-key-told = por F1 e F2
box-source = Mullick, Kandpal e Saxena 1987 (Solar Energy 39, 353–360) e IS 13429. Eles escrevem F2 com o logaritmo dos dois extremos: o mesmo sob sol constante, e até 2 % diferente sob um sol que muda um décimo, mais onde F1·H está perto do fim da subida (simulado). Eles calculam a fervura a 100 °C; este relatório, ao ponto de ebulição local. Nenhum valor de aprovação para F2 é dado: dois são citados, e eles divergem.
box-no-dry-run = não há série a seco, por isso não há F1, nem F2, que se baseia nela
box-no-dry-run-remedy = deixe a caixa vazia ao sol em torno do meio-dia e registre a sua placa: kind = "dry"
box-no-plateau = nenhuma série a seco tem patamar, por isso não há F1, nem F2
box-no-plateau-remedy = veja o que falta às séries a seco
box-plane-normal = a irradiância foi medida de frente para o sol; F1 e F2 são definidas para um sensor deitado na horizontal
box-plane-not-stated = o plano do sensor de irradiância não está indicado; F1 e F2 são definidas para um sensor deitado na horizontal
box-plane-estimated = a irradiância é estimada; F1 e F2 são definidas para um sensor deitado na horizontal
box-plane-remedy = deite o sensor na horizontal ao lado da caixa, e indique plane = "horizontal"
box-cover-mirrors = F1 e F2 são para uma caixa cujos espelhos refletores, se os tem, estão cobertos; nenhum registro mostra isso
box-cover-mirrors-remedy = cubra-os nestas séries, e diga isso nas notas
box-no-water-run = nenhuma série aquece água, por isso não há F2
box-no-heating = não há subida de { $from } a { $to } °C sem lacuna e com irradiância em { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
} com água, por isso não há F2
box-no-heating-remedy = comece abaixo de { $from }, continue até passar de { $to }, e leia pelo menos a cada vinte minutos
box-runs-left-out = séries com água sem uma subida inteira de { $from } a { $to } °C, não usadas: { $runs }
# Loads in kg/m².
box-load-off = a carga foi de { $load }; uma carga completa é de cerca de { $full }
box-load-off-remedy = pese { $full } kg de água por m² de vidro; a potência padronizada pede 7 kg por m² de área de captação, portanto uma só carga nem sempre cumpre as duas condições
# Both in K.
box-beyond-reach = em { $rises ->
    [one] { $rises } subida
   *[other] { $rises } subidas
} a água chegou a { $end } acima do ar, mais do que esta F1 permite: ali F1·H é { $reach }. Uma subida assim não é usada
box-no-upper-end = F1·H é { $reach }, tão perto dos { $end } em que a temperatura final da água excede a do ar que F2 não tem extremo superior
box-near-reach = a temperatura final da água, { $end } acima do ar, está perto de F1·H, { $reach }: com F1 menor em 1 %, F2 fica { $more } % maior
box-reach-remedy = ensaie sob um sol mais forte, ou termine a subida a uma temperatura mais baixa
box-one-day = as séries a seco ou as subidas são de um só dia, por isso as faixas não são de 95 %
box-one-day-remedy = ensaie em outros dias

## Concentrating cooker

section-dish = Ensaio de resfriamento e aquecimento
dish-what = À sombra, a temperatura da carga acima do ar decai com a constante de tempo τ0; a sua perda é C/τ0, com a capacidade térmica C da água e dos recipientes. F′UL é essa perda por m² de superfície dos recipientes. Ao sol, F′η0 é a fração da radiação sobre a área de captação que a carga absorve, sem descontar as perdas.
dish-loss = perda para o ar pelo resfriamento, F′UL·At
dish-rests-on-cooling = A perda baseia-se em { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
} de resfriamento, de { $from } até descer a { $to }.
dish-rests-on-vessels = A capacidade térmica dos recipientes está incluída, { $heat } J/K: { $basis }.
dish-rests-on-heating = O fator óptico baseia-se em { $runs ->
    [one] { $runs } aquecimento
   *[other] { $runs } aquecimentos
}, de { $margin } acima do ar a { $margin } abaixo da ebulição, até onde cada um chega.
dish-caption = Água acima da temperatura média do ar desde o início de cada série de resfriamento; traço grosso: o que a sua constante de tempo dá com ar constante.
dish-alt = Gráfico de linhas da temperatura da água acima do ar em função do tempo, de { $runs ->
    [one] { $runs } série
   *[other] { $runs } séries
} de resfriamento, com a curva exponencial. A constante de tempo média é de { $minutes } minutos.
dish-axis-time = tempo desde a primeira leitura, min
dish-axis-difference = água acima do ar, { $unit }
dish-key-water = leituras
dish-key-told = pela constante de tempo
dish-source = Mullick, Kandpal e Kumar 1991 (Solar Energy 46, 139–144). Eles tomam a inclinação de ln(T − Ta); este relatório toma a de T em função da integral de T − Ta: o mesmo com ar constante, e correto com ar que aquece, onde o outro erra de 2 a 9 % com 1 K/h e constantes de tempo de uma a duas horas (simulado). Eles calculam a fervura a 100 °C; este relatório, ao ponto de ebulição local.
dish-no-cooling-run = não há série de resfriamento, por isso não há constante de tempo, nem perda, nem fator óptico
dish-no-cooling-run-remedy = deixe uma carga quente esfriar à sombra, e registre-a: kind = "cooling"
dish-begins-too-cool = { $log }: a água começa { $above } acima do ar, e uma série de resfriamento exige pelo menos { $least }; não é usada
dish-begins-too-cool-remedy = comece perto da ebulição
dish-warms = { $log }: a água chegou a ficar { $rise } mais quente do que estava antes, por isso o sol a atingiu, ou foi acrescentada água quente; não é usada
dish-warms-remedy = vire o fogão para longe do sol ou faça sombra sobre toda a abertura
dish-cooling-too-short = { $log }: antes de uma lacuna de mais de vinte minutos ou de um trecho excluído há leituras de menos, ou uma descida de menos de um quinto da temperatura inicial acima do ar; não é usada
dish-cooling-too-short-remedy = leia a cada cinco minutos ou com mais frequência, por uma hora ou mais
dish-no-loss-area = a superfície dos recipientes não está indicada, por isso a perda é dada só em W/K
dish-no-loss-area-remedy = indique loss_area_m2 em [cooker]: paredes e tampa dos recipientes
dish-no-vessel-heat = a capacidade térmica dos recipientes não está indicada, e não é incluída: a perda e o fator óptico ficam baixos demais por essa parte
dish-no-vessel-heat-remedy = pese os recipientes vazios: vessel_mass_kg e vessel_material em [load]
dish-no-heating = nenhuma série com água tem uma subida de { $rise } com irradiância, sem lacunas nem trechos excluídos, por isso não há fator óptico
dish-no-heating-remedy = registre um aquecimento de pelo menos { $rise } ao sol, com irradiância
dish-plane-not-normal = a irradiância não foi medida de frente para o sol, e o fator óptico é para a radiação direta
dish-plane-estimated = a irradiância é estimada, e o fator óptico toma a da radiação direta
dish-plane-remedy = mantenha o sensor virado para o sol, e indique plane = "normal"
dish-global-not-beam = um sensor virado para o sol vê também o céu em volta dele, que um espelho com foco não usa: com ele, o fator óptico fica menor do que só com a radiação direta, cerca de um décimo sob céu muito limpo, e um sexto ou mais com névoa (prática comum)
dish-global-not-beam-remedy = diga nas notas se o sensor via só a radiação direta
dish-no-end = dentro da incerteza dos instrumentos, a faixa de um dos números não tem extremo, e ele não é dado
dish-no-end-remedy = meça a irradiância com um sensor mais bem conhecido, e indique a sua incerteza
dish-one-day = o resfriamento ou o aquecimento é de um só dia, por isso as faixas não são de 95 %
dish-one-day-remedy = ensaie em outros dias

## Energy and exergy

section-efficiency = Energia e exergia
efficiency-what = Eficiência energética: o calor que a água recebeu sobre a energia solar na área de captação. Eficiência exergética: o mesmo com a exergia, a parte que poderia realizar trabalho, em que a água quente conta mais que a morna. Exergia máxima: o vértice da parábola da exergia em função da diferença de temperatura; fator de qualidade: esse máximo sobre a exergia do calor que ali se perde.
# { $range } in °C.
efficiency-rests-on = Baseiam-se em { counted-intervals } com leituras confiáveis, água de { $range }, { $irradiance } W/m² em média. A capacidade térmica dos recipientes não está incluída.
efficiency-peak-at = O máximo fica { $difference } acima do ar, sob o sol do ensaio ({ $irradiance } W/m² em média).
efficiency-caption = Exergia que a água ganha, intervalo por intervalo.
efficiency-caption-no-peak = Exergia que a água ganha, intervalo por intervalo. Não há máximo entre os intervalos.
efficiency-alt = Gráfico de pontos da exergia em watts em função da diferença de temperatura em kelvins, { counted-intervals }.
efficiency-axis-difference = diferença de temperatura, Td, { $unit }
efficiency-axis-exergy = exergia, W
efficiency-key-intervals = intervalos
efficiency-key-parabola = parábola
efficiency-source = Exergia da radiação solar segundo Petela 1964, com o sol a 5777 K; exergia da água pela segunda lei. Como Öztürk 2004 e outros; os artigos escolhem outras faixas de temperatura da água, por isso compare só com a faixa acima. Exergia máxima e fator de qualidade segundo Kumar, Vishwanath e Gupta 2012; que a perda ali é a exergia do calor perdido, u·Td·(1 − Ta/T), com o u deste relatório, é interpretação deste projeto.
efficiency-plane = a irradiância foi medida com um sensor deitado na horizontal: onde a área de captação está virada para o sol, a energia solar é subestimada, e as eficiências saem altas demais
efficiency-plane-remedy = compare só com ensaios cujo sensor estava deitado na horizontal
efficiency-no-peak = a exergia não tem ponto mais alto entre os intervalos, por isso não há máximo nem fator de qualidade
efficiency-no-peak-remedy = ensaie de { $above } acima do ar até perto da ebulição
efficiency-no-loss = a perda pode ser nula, por isso não há fator de qualidade
efficiency-no-loss-remedy = ensaie em uma faixa mais larga de temperaturas da água, e em mais dias
efficiency-one-day = todos os dados são de um só dia, por isso as faixas não são de 95 %
efficiency-one-day-remedy = ensaie em outros dias

## Where no water heats

tested-method-none = nenhum da norma: nenhuma série aquece água
tested-environment-dry = Ambiente dos patamares
tested-environment-cooling = Ambiente das séries de resfriamento
tested-no-plateau = nenhum patamar

## On the terminal: the table of report, and what stands below it

# Headers of the table: there is little room.
terminal-campaign = campanha
# As in English
terminal-rating = Ps(50), W (95 %)
# As in English
terminal-r-squared = R²
terminal-used = usados
terminal-days = dias
terminal-conformity = conformidade
terminal-report = relatório
# Data that nobody measured.
terminal-invented = { $title } (inventada)
# What weakens a rating, each behind its level: "indicative only; horizontal sensor".
terminal-irradiance-not-measured = irradiância não medida
terminal-horizontal = sensor na horizontal
terminal-plane-not-stated = plano do sensor sem indicação
terminal-one-day = um só dia: ± não é de 95 %
terminal-days-not-in-spread = dispersão entre dias fora do ±: não é de 95 %
terminal-extrapolated = extrapolado a 50 K
# Of several campaigns that share a note; { $names }: their names.
terminal-campaigns = { $count } campanhas ({ $names })
terminal-more = mais { $count }
# In place of the campaigns above, before the first of several notes that are alike.
terminal-alike = { $campaigns }; a primeira
terminal-alike-gravest = { $campaigns }; o caso mais grave, o da primeira
terminal-alike-times = { $campaigns }, { $count } vezes; a primeira
# Before a note below the table.
terminal-note = nota
# A note, or what a campaign lacks, behind those that it is about; a cell behind its header.
terminal-whose = { $whose }: { $said }
terminal-left-alone =
    { $all ->
        [1] fica como está: nada daquilo em que o relatório se baseia mudou; --fresh o faz de novo
       *[other] { $count } de { $all } campanhas ficam como estão: nada daquilo em que seus relatórios se baseiam mudou; --fresh faz todos de novo
    }
# A note on a campaign; { $names }: long logs.
terminal-kept-beside = { $names } não está dentro do PDF: entregue-o junto com o relatório, ou faça o relatório com --carry-all
# A note on a campaign; { $count }: how many files, { $names }: the first of them.
terminal-unnamed-logs = { $count ->
    [one] um arquivo da sua pasta parece um registro, e nenhuma série o nomeia: { $names }
   *[other] { $count } arquivos da sua pasta parecem registros, e nenhuma série os nomeia: { $names }
}

## What check says of the other procedures

# The first line; { $level }: one of those that begin with level-, { $title }: the campaign's.
# As in English
check-verdict = { $level }: { $title }
# { $caveats }: irradiance-estimated and the like.
# As in English
check-verdict-with = { $level } ({ $caveats }): { $title }
# Labels of the lines below it, and what stands beside them.
check-next = a seguir
check-so-far = até agora
check-aim = meta
check-name = campanha
# The first line of several campaigns; { $levels }: "3 × conforms, 2 × cannot be read".
check-many = { $count } campanhas: { $levels }
check-unreadable = não pode ser lida
# Before what is to be done next in several campaigns; { $first }: the folder of the first of them.
check-campaigns = { $count } campanhas
check-campaigns-first = { $first } e mais { $others }
check-next-unreadable = corrija os erros indicados abaixo
# Of campaigns for whose next steps there is no room.
check-next-other = veja abaixo
check-next-reports = escreva os relatórios: { $command }
# Header of a table.
check-folder = pasta
# Headings over what is said of several campaigns.
check-many-next = O que fazer agora
check-many-findings = O que impede a conformidade das campanhas, e como corrigir
check-many-notes = A declarar junto com os números
check-many-figures = Os outros valores
check-shown = São mostradas { $shown } de { $count } campanhas, primeiro as mais distantes da conformidade.
check-shown-unreadable = São mostradas { $shown } de { $count } campanhas: primeiro as que não podem ser lidas ({ $unreadable }), depois as mais distantes da conformidade.
check-shown-only-unreadable = São mostradas { $shown } de { $count } campanhas, todas entre as { $unreadable } que não podem ser lidas.
# { $one }: a command, { $whole } and { $json }: options.
check-whole = Uma campanha por inteiro: { $one }. Todas: { $whole }, ou { $json }
check-rating = Ps(50) = { $rating }, de { $used } de { counted-intervals } em { counted-days }
check-no-number = sem resultado: { $used } de { counted-intervals } podem ser usados
# { $none }: "no rating: there is no interval"; { $power }: "55 ± 12 W (not 95 %)".
check-so-far-balance = { $none }; o balanço térmico dá { $power } a 700 W/m² e 50 K: indicativo, não um resultado da norma
check-none-used = sem resultado: { $intervals ->
    [0] não há nenhum intervalo
    [one] o único intervalo não pode ser usado
   *[other] nenhum dos { $intervals } intervalos pode ser usado
}
check-not-valid = sem número: a água ganharia mais calor que a energia solar que incide no fogão; mais intervalos não ajudam
# What to do next. { $command } stays as it is.
check-next-report = escreva o relatório: { $command }
# { $remedy }: what to do before more is measured.
check-next-then = { $remedy }; depois, { $missing }
# In place of the remedy above, where a notice doubts place or time.
check-next-note = veja primeiro o aviso sobre o local, uma data ou um relógio, e corrija o que estiver errado
# { $next }: what to do; irradiance is estimated, which more of the same does not mend.
check-next-still = { $next } (continuará indicativo sem um sensor de irradiância voltado para o sol)
# Headers of the tables of runs: there is little room.
check-run = série
check-date = data
check-readings = leituras
check-intervals = intervalos
check-used = usados
check-aside = descartados
check-kind = tipo
check-from = de
check-to = a
# In the last column of the table, behind a number of intervals: two words at most.
aside-water-below-window = água fria
aside-water-above-window = quase fervendo
aside-ambient-out-of-range = ar
aside-irradiance-low = sol fraco
aside-irradiance-high = sol forte
aside-irradiance-unsteady = sol instável
aside-wind-high = vento
aside-outside-solar-window = hora
aside-reading-gap = lacunas
aside-excluded-by-tester = excluídos
aside-not-cloudless = céu
# Headings.
check-findings = Deficiências, e como corrigi-las
check-notes = A declarar junto com o número
check-set-aside = Intervalos descartados, e o que ajuda
check-notices = Avisos
check-how-read = Como os registros foram lidos
check-shared = dá { $keys }
check-shared-nothing = não dá nada: arquivos mais próximos indicam as mesmas chaves
# Below the table. { $run }: its name, { $shortest }, { $longest }: minutes.
check-hole = { $run }: nenhum intervalo de { $from } a { $to } em { $date }: ali não há duas leituras da água separadas por { $shortest } a { $longest } minutos
check-not-normalised = { $run }: { counted-intervals } sem irradiância, dentro de todos os limites e fora de uso
# What helps where intervals are set aside: what the person beside the cooker can do.
helps-water-below-window = comece com a água alguns graus acima do ambiente, ou deixe-a aquecer antes que conte
helps-water-above-window = encerre a série, ou recomece com água fria, quando a água se aproximar da ebulição
helps-ambient-out-of-range = escolha outra estação do ano ou outra hora do dia
helps-irradiance-low = espere céu limpo, e mantenha limpo o vidro do sensor
helps-irradiance-high = verifique a calibração do sensor, e evite que luz refletida chegue a ele
helps-irradiance-unsteady = ensaie em dias sem nuvens passageiras, e mantenha o sensor orientado
# In place of the three above where a model of the clear sky gives irradiance, and no sensor.
helps-irradiance-of-model = verifique latitude, longitude e fuso horário, dos quais o sol é estimado, e ensaie mais perto do meio-dia solar
helps-wind-high = ensaie em lugar abrigado ou em dias mais calmos
helps-outside-solar-window = aqueça dentro da janela, que é em hora solar
helps-reading-gap = registre cada grandeza pelo menos uma vez em cada intervalo
helps-excluded-by-tester = nada, a menos que a exclusão tenha sido um engano
helps-not-cloudless = anote em cada leitura se o céu estava sem nuvens; meça a irradiância onde passam nuvens
# Behind helps-outside-solar-window.
helps-by-clock = { $helps }; em { $date } isso foi de { $from } a { $to } pelo relógio
# Of several logs, { $what }: what is said of each of them.
check-of-logs = { $count } registros
check-figures = Outros números até agora
check-no-figures = Ainda nenhum outro número.
box-grade-one-day = nenhum: F1 está acima de { $limit } K m²/W (IS 13429), mas de um só dia, e outro pode ser menor
box-grade-not-flat = nenhum: a irradiância não foi medida com um sensor na horizontal, para o qual vale o limite, { $limit } K m²/W (IS 13429)
box-glass = O vidro tem { $area }, como indicado.
box-glass-not-stated = A área de captação, { $area }, é tomada como a do vidro. Se ela incluir espelhos, F2 fica baixa demais: indique a área do vidro.
box-beyond-reach-remedy = F1 é baixa demais, ou o sensor leu a menos nessa série: verifique que se chegou ao patamar, que os espelhos estavam cobertos do mesmo modo e que o sensor estava na horizontal
boiling-gets-to = não há tempo até ferver: sob o sol do ensaio a água chega a { $highest }, e ferve a { $boiling }
boiling-may-not = não há tempo até ferver: dentro da incerteza dos números, a água pode não chegar a { $boiling }, onde ferve
boiling-remedy = ensaie sob um sol mais forte, ou melhore o fogão
dish-runs-left-out = séries com água sem uma subida de { $rise } ao sol e sem lacunas nem trechos excluídos, não usadas: { $runs }
dry-no-ambient = o ar não foi lido a menos de duas horas dos trechos constantes
dry-no-ambient-remedy = leia o ar pelo menos a cada duas leituras
dry-may-get-hotter = no seu patamar o recipiente ainda subia { $rate } K/min: pela sua subida inicial pode acabar { $more } mais quente
dry-no-end = a diferença por W/m² não é dada: dentro da incerteza da irradiância, a sua faixa não tem extremo
efficiency-peak-unsure = a exergia máxima não é dada: ela não existe sem um dos dias, ou dentro da incerteza dos instrumentos
efficiency-peak-unsure-remedy = ensaie em mais dias, cada um de { $above } acima do ar até perto da ebulição
efficiency-too-much = a água recebeu mais calor do que a energia solar na área de captação, o que não pode ser
efficiency-too-much-remedy = verifique a área de captação, a carga e as unidades
tested-instruments-note-cooling = Incertezas-padrão (k = 1); de uma classe, os seus limites. Onde nenhuma das duas é indicada, supõe-se a classe mais cautelosa (prática comum).

## Comparison: figures beside the rating

section-beside = Números à parte do resultado
# A list of several campaigns for each figure: headers, and cells. Numbers are those of campaigns.
beside-head-value = valor
beside-head-apart = distingue-se de
beside-from-none = nenhuma
# A cell: how many of those that it is compared with.
beside-from-so-many = { $apart } de { $compared }
# { $reasons }: some of beside-not-compared-why, with ";" between them.
beside-not-compared-list = Não comparadas: { $reasons }.
# { $pairs }: some of beside-not-compared-with, with ";" between them.
# As in English
beside-not-compared-why = { $pairs } ({ $why })
# Numbers of campaigns.
beside-not-compared-with = { $one } com { $others }
beside-pairs = { $count ->
        [one] { $count } par
       *[other] { $count } pares
    }
# { $numbers }: "2, 5–7".
beside-list-note = Cada ± é para 95 %, salvo onde está escrito “{ beside-one-day }”. O que as campanhas têm em comum se anula na diferença, por isso dois números cujas faixas se sobrepõem ainda podem diferir. Os números dos quais não se comparam dois estão no arquivo de dados.
beside-first-only = De cada número mostram-se os primeiros { $shown }, de { $campaigns } campanhas no total; todos os pares estão no arquivo de dados.
# A title where there is no rating.
beside-title = Números de { $count } campanhas, comparados
beside-title-none = Nenhum número destas { $count } campanhas pode ser comparado
# { $name }: the campaign with which all others were to be compared.
beside-title-none-of = Nenhum número de { $name } pode ser comparado com o de outra campanha
beside-title-hotter = { $first } fica mais quente que { $second } a seco
beside-title-not-told = Não se pode dizer qual fica mais quente a seco, { $first } ou { $second }
beside-in-all = { $apart } de { $compared } diferenças de números se distinguem.
# Headers of a table. "First" and "second" are the campaigns of a pair, second − first.
beside-figure = número
beside-difference = diferença
beside-verdict = distinguem-se?
# After the difference of two percentages.
beside-points = pontos percentuais
# In that column, and on a terminal after the difference.
beside-told-apart = distinguem-se
beside-not-told-apart = não se distinguem
beside-apart-when-tested = distinguiram-se quando ensaiados
# { $pairs } is more than one.
beside-by-chance = não se distinguem sendo { $pairs } pares
# { $why }: one of figure-unlike-….
beside-not-compared = não se comparam: { $why }
# { $verdict }: one of those above; { $marks }: one or several of the next three.
# As in English
beside-marked = { $verdict } ({ $marks })
beside-one-day = não 95 %
beside-indicative = indicativo
beside-vessels-not-stated = recipientes não indicados
figure-unlike-vessels = outros recipientes
figure-unlike-plane = irradiância em outro plano
figure-unlike-plane-not-stated = plano da irradiância não indicado
figure-unlike-load-or-sun = outra carga, outro sol ou outro ar
figure-unlike-load = outra carga
figure-unlike-span = outra faixa de temperaturas da água
figure-unlike-vessel-heat = o calor dos recipientes só conta em uma
figure-unlike-no-budget = não se sabe de que se compõe o seu ±
beside-note = Cada ± é para 95 %, salvo onde está escrito “{ beside-one-day }”. O que as duas campanhas têm em comum anula-se na diferença, por isso dois números cujas faixas se sobrepõem ainda podem diferir.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = O recipiente seco de { $second } aquece mais por W/m² que o de { $first }: { $difference } K m²/W a mais ({ $interval }), { $share } %: uma diferença real.
beside-cooler = O recipiente seco de { $second } aquece menos por W/m² que o de { $first }: { $difference } K m²/W a menos ({ $interval }), { $share } %: uma diferença real.
beside-hotter-one-day = O recipiente seco de { $second } aqueceu mais por W/m² que o de { $first } quando ensaiado: { $difference } K m²/W a mais ({ $interval }), { $share } %. Não foram ensaiados em vários dias cada um, de modo que os dias, por si só, podem explicar a diferença: ensaie os dois de novo em outros dias.
beside-cooler-one-day = O recipiente seco de { $second } aqueceu menos por W/m² que o de { $first } quando ensaiado: { $difference } K m²/W a menos ({ $interval }), { $share } %. Não foram ensaiados em vários dias cada um, de modo que os dias, por si só, podem explicar a diferença: ensaie os dois de novo em outros dias.
beside-hotter-by-chance = Qual recipiente seco aquece mais por W/m², o de { $second } ou o de { $first }, não fica demonstrado: diferem em { $difference } K m²/W ({ $interval }), { $share } %, mas entre { $pairs } pares um pode diferir tanto por acaso.
beside-hotter-not-told = Não se pode dizer qual recipiente seco aquece mais por W/m², o de { $second } ou o de { $first }: { $second } tem { $difference } K m²/W a mais, { $share } %, e qualquer valor de { $interval } é compatível com os dados.
beside-cooler-not-told = Não se pode dizer qual recipiente seco aquece mais por W/m², o de { $second } ou o de { $first }: { $second } tem { $difference } K m²/W a menos, { $share } %, e qualquer valor de { $interval } é compatível com os dados.
beside-hotter-not-compared = Não se compara quanto aquecem os recipientes secos de { $second } e { $first }: { $why }.
beside-nothing-shared = { $second } e { $first } não têm nenhum número em comum.
beside-others = Outros números de { $second } e { $first } que se podem comparar: { $compared }; destes, distinguem-se: { $apart }.
comparison-dry-title = Recipientes secos
comparison-dry-note = Patamar: onde o recipiente não aqueceu mais. K m²/W: recipiente acima do ar, por W/m², ± para 95 %.
comparison-dry-caption = Temperatura do recipiente seco em °C em função dos minutos desde o início de uma série, em preto a da campanha indicada acima do painel; traço grosso: o patamar. Não estiveram sob um mesmo sol: compare K m²/W, não graus.
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = Temperatura do recipiente seco em função do tempo, máxima { $highest }.
# As in English
comparison-practice-no-rating = JCGM 100:2008 para as diferenças
beside-note-difference = A incerteza de uma diferença de números à parte do resultado inclui a dispersão e os dias das duas campanhas, cada uma com os seus próprios graus de liberdade, e o que os seus instrumentos não têm em comum. O efeito de um mesmo dia nas duas não é descontado, o que a aumenta. O resultado tem a sua própria comparação; também o ganho e a perda, onde as duas têm um resultado e um balanço térmico.
beside-note-alike = Os números comparam-se onde os arquivos das campanhas indicam condições semelhantes: por W/m², a irradiância no mesmo plano; de recipientes secos ou que esfriam, o mesmo número de recipientes, com o mesmo calor e a mesma superfície dentro de 2 %; tempos até ferver, eficiências e exergia máxima, a irradiância dentro de 2 % e o ambiente dentro de 2 K; tempos até ferver, a carga dentro de 2 % e o ponto de ebulição dentro de 2 K; eficiências, uma faixa de temperaturas da água dentro de 5 K nos seus extremos e de 2 K em média; F2, a carga por m² dentro de 10 %; constante de tempo, a carga dentro de 2 %. Estes limites são prática comum. “Recipientes não indicados”: não se sabe se eram semelhantes.
beside-note-pairs = “Distinguem-se”: o p da diferença é menor que 0,05, corrigido pelo método de Holm para os pares em que o número é comparado, de { $pairs } no total; não é corrigido para a quantidade de números. De uma diferença entre dias isolados nunca se diz que se distinguem.

## Slips that show

dry-sun-down = no patamar o sol estava abaixo do horizonte: o relógio, o fuso horário ou o lugar está errado
dry-sun-down-remedy = corrija time_zone, latitude e longitude em [site], ou as horas do registro
dry-colder-than-air = o recipiente marca { $below } abaixo do ar mais fresco da série: um dos dois está em outra unidade que a indicada
dry-very-hot = o recipiente marca { $highest }, mais do que alcançam fogões de fabricação caseira (prática comum, sem fonte publicada): o termômetro está em °F?
dry-unit-remedy = indique vessel_temperature e ambient_temperature em [units], "°F" ou "°C", como mostra cada termômetro
dish-losses-differ = a perda por resfriamento, { $cooling } W/K, e a do balanço térmico, { $balance } W/K, diferem mais do que os seus ±: o sol chegou à carga que resfriava, ou o vento era outro
dish-losses-differ-remedy = faça sombra sobre toda a abertura e a panela enquanto esfria, e anote o vento nas duas séries
box-plane-turned = as leituras do sensor deitado foram convertidas para o plano voltado para o sol, uma estimativa; F1 e F2 são definidas para elas sem conversão
box-plane-turned-remedy = faça uma segunda campanha com os mesmos registros, sem estimate e com plane = "horizontal"
notice-long-run-other = { $log }: as leituras abrangem { $days } dias, uma série é um ensaio em um dia; verifique as datas, ou indique start e end
finding-no-water = nenhuma série desta campanha aquece água, portanto não há nada a avaliar
finding-no-water-remedy = aqueça uma carga pesada na balança para obter um resultado; os outros números valem por si
instrument-assumed = sem indicação; por suposição, { $class }: { $basis }

## A test day while it runs, on the terminal

# The first line: how it stands. It is read in the sun, so it is short.
watch-waiting = Aguardando a primeira linha de hoje
watch-silent = Sem linhas há { $time }
watch-over = A janela solar de hoje fechou
# { $kind }: what is tested, a message that begins with kind-.
watch-other-run = Em medição: { $kind }
watch-begins = Um intervalo começa
watch-no-run = Chegam linhas, mas de nenhuma série
# { $passed }, { $length }: minutes.
watch-good = Bom até agora: { $passed } de { $length } min deste intervalo
# { $faults }: one of the next two or several, or a message that begins with reason-.
watch-at-risk = Em risco: { $faults }
watch-spoiled = Este intervalo está perdido: { $faults }
# { $what }: what is limited, a message that begins with limit-; then numbers with their unit.
watch-at-least = { $what } { $found }, pelo menos { $limit }
watch-at-most = { $what } { $found }, no máximo { $limit }
# Behind check-next: what to do.
watch-next-start = oriente o fogão e ligue o registrador
watch-next-logger = veja o registrador: energia, cabo, memória
watch-next-tomorrow = encerre por hoje
watch-next-aim = oriente agora
watch-next-no-run = veja se a água aquece, e confira start e end em campaign.toml
watch-next-keep = deixe como está
watch-next-enough = já basta: pode encerrar depois deste intervalo
watch-next-cool-water = tenha água fria pronta: o próximo intervalo ficará quente demais
# { $remedy }: a message that begins with helps-.
watch-next-spoiled = { $remedy }; o próximo intervalo começa às { $clock }
# Labels, and what stands beside them.
watch-vessel = recipiente
watch-above = { $difference } acima do ar (Td)
watch-air = ar { $air }
watch-irradiance = { $irradiance } W/m²
# { $turned }: as it counts, { $irradiance }: as the sensor that lies flat has it.
watch-irradiance-turned = { $turned } W/m² de frente para o sol, valor usado (sensor na horizontal: { $irradiance })
watch-wind = vento { $wind }
watch-spoils = estraga-o
watch-spoils-irradiance = irradiância abaixo de { $low } ou acima de { $high } W/m²
watch-spoils-wind = vento médio acima de { $most } (até agora { $mean })
watch-spoils-water = água acima de { $most }
watch-today = hoje
# In place of today, where the newest row is of another day; what stands beside it.
watch-last-day = último dia
# { $gained }: the next one.
watch-gained-on = { $date }: { $gained }
# { $all }: intervals of today, used or not.
watch-gained = { $used } de { $all ->
    [one] { $all } intervalo usado
   *[other] { $all } intervalos usados
}
watch-missing = ainda falta: { $missing }
watch-missing-nothing = já é suficiente
watch-aim = reorientar
watch-aim-not-stated = sem horários: falta acceptance_half_angle_deg em campaign.toml. Prática comum, sem fonte publicada: um refletor raso a cada 45 min mais ou menos, um refletor parabólico de foco nítido a cada 10 a 15
watch-aim-always = o tempo todo, por um motor
watch-aim-due = agora ({ $clock })
watch-aim-done = hoje não mais
watch-at-in = às { $clock }, em { $time }
watch-opens = abre às { $clock }, em { $time }
watch-closes = fecha às { $clock }, em { $time }
watch-closed = fechou às { $clock }
# { $said }: what check says; { $level }: one of those that begin with level-.
watch-so-far = { $level }: { $said } (linhas até { $clock })
watch-so-far-no-row = { $level }: { $said }
watch-time = hora
watch-time-text = { $now }; última linha { $row }
watch-seconds = { $seconds } s
# From two days on.
watch-days = { $days } dias
# What is not as it should be. { $what }: an error, in English.
watch-log-missing = { $log } ainda não está lá
watch-log-gone = { $log } não está mais lá; mostra-se o que continha antes
watch-not-read = não pode ser usado agora: { $what }
watch-campaign-not-read = o arquivo da campanha não pode ser usado agora, vale o último bom: { $what }
watch-line-not-ended = { $log }: sua última linha está incompleta e ainda não é usada
watch-begun-anew = { $log } foi recomeçado: só se usa o seu conteúdo atual
watch-none-later = vieram linhas sem leitura posterior a { $clock }: o relógio do registrador foi atrasado?
watch-clock-jumped = o relógio das linhas saltou { $time }
watch-clocks-apart = o relógio das linhas e o deste computador diferem em { $time }
watch-caution = Nunca olhe para o foco nem para o sol. O metal quente e o vapor queimam: luvas. Vire o fogão para longe do sol antes de pôr as mãos nele. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.
watch-caution-dry = Um recipiente seco passa muito de 100 °C e queima ao toque. Nunca jogue água nele enquanto está quente. Nunca olhe para o foco nem para o sol; vire o fogão para longe dele antes de pôr as mãos nele. Os regulamentos locais e a prática de profissionais licenciados vêm primeiro.
