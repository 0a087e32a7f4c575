# Kiswahili.

## Numbers, dates, lists

# As in English
decimal-mark = .
ends-of-range = { $low } hadi { $high }
list = { $first } na { $last }
# Between two clauses of a sentence.
# As in English
clause-break = { "; " }
# As in English
date = { $day } { $month } { $year }
month-1 = Januari
month-2 = Februari
month-3 = Machi
month-4 = Aprili
month-5 = Mei
month-6 = Juni
month-7 = Julai
month-8 = Agosti
month-9 = Septemba
month-10 = Oktoba
month-11 = Novemba
month-12 = Desemba

## What is attached to a report, one line each

attached-campaign = Faili ya kampeni: nini kilijaribiwa, wapi, na kwa vifaa gani
attached-shared = Funguo zinazotumiwa kwa pamoja na kampeni kadhaa
attached-log = Rekodi, baiti kwa baiti kama ilivyosomwa
attached-photo = Picha ya jiko, kama ilivyo katika ripoti
attached-rating = Matokeo yote kama data, kwa usahihi kamili
attached-intervals = Safumlalo moja kwa kila kipindi, vilivyotumika na vilivyowekwa kando
attached-comparison = Ulinganisho kama data, kwa usahihi kamili
attached-pairs = Safumlalo moja kwa kila jozi ya kampeni
attached-plan = Mpango wa siku kama data
checkable = Data zimo ndani ya PDF hii. Mtu yeyote anaweza kuihakiki: “simmerline verify FAILI”, toleo { $version }, huiunda upya kutokana nazo na kusema kama ndiyo faili iliyotolewa.
checkable-from = Data zimo ndani ya PDF hii. Mtu yeyote anaweza kuihakiki: “simmerline verify FAILI”, toleo { $version } (kutoka { $address }), huiunda upya kutokana nazo na kusema kama ndiyo faili iliyotolewa.
checkable-beside = { $said } Rekodi zenye zaidi ya MB { $limit } hazimo ndani: zitunze kando yake, kwa kuwa uhakiki unazihitaji.
checkable-not = PDF hii haina data, kwa hiyo haiwezi kuhakikiwa peke yake. Inachapisha SHA-256 ya kila faili ya data.
# On the web page.
page-not-checkable = Ukurasa huu wa wavuti hauna data: PDF ya ripoti hii pekee ndiyo inayoweza kuthibitishwa.

# The rating: page one, conditions, runs, intervals, the line, tests of the dry vessel.
#
# Standardised cooking power is "Ps", the temperature difference between water and ambient
# "Td", the rating "Ps(50)": symbols stay as they are in every language.

## Counts, each within several of the sentences below
#
# Where a language needs them in another case, write them into the sentence instead.

counted-intervals = { $intervals ->
    [one] kipindi { $intervals }
   *[other] vipindi { $intervals }
}
counted-used = { $intervals ->
    [one] kipindi { $intervals } kilichotumika
   *[other] vipindi { $intervals } vilivyotumika
}
counted-days = { $days ->
    [one] siku { $days }
   *[other] siku { $days }
}
# Of the line: points less two.
counted-freedom = { $freedom ->
    [one] digrii { $freedom } ya uhuru
   *[other] digrii { $freedom } za uhuru
}

## Every page

report-kind = Ripoti ya jaribio la jiko la jua
report-kind-indicative = Ripoti ya jaribio la jiko la jua: elekezi
report-kind-not-valid = Ripoti ya jaribio la jiko la jua: si halali
report-kind-no-rating = Ripoti ya jaribio la jiko la jua: hakuna tathmini
report-kind-estimated = Ripoti ya jaribio la jiko la jua: elekezi, mnururisho umekadiriwa
# { $title } is the tester's own.
report-title-indicative = { $title } (elekezi)
report-title-not-valid = { $title } (si halali)
report-title-no-rating = { $title } (hakuna tathmini)
report-title-estimated = { $title } (elekezi, mnururisho umekadiriwa)
report-invented = Data za kubuni, kwa maonyesho
report-statement = Matokeo yanahusu tu jiko kama lilivyojaribiwa. Nakili ripoti nzima tu.
# In the middle of a line; the program sets a capital letter where it stands alone.
irradiance-estimated = mnururisho umekadiriwa
# At the head of a page. [number] is put in by the program and has to stay as it is written.
page-head = Ripoti [number]
# At the foot of a page. [page] and [pages] are put in by the program.
page-foot = ukurasa [page] kati ya [pages]
letterhead-client = kwa ajili ya { $client }
letterhead-client-contact = kwa ajili ya { $client }, { $contact }
letterhead-number = Ripoti { $number }
letterhead-issued = imetolewa { $date }
sign-tested = Mpimaji
sign-authorised = Imeidhinishwa na
sign-date = Tarehe na sahihi
letterhead-hashes = SHA-256 za faili za data huanza { $hashes } (nzima: sehemu ya { $section }).
letterhead-hashes-more = SHA-256 za faili za data huanza { $hashes } na nyingine { $more } (nzima: sehemu ya { $section }).

## Page one: how far the rating conforms

level-conforms = Inakidhi
level-conforms-with-notes = Inakidhi, pamoja na maelezo
level-indicative = Elekezi tu
level-not-valid = Si halali
level-no-rating = Hakuna tathmini
# In the sentences that follow, the words of the level are set in bold where they stand
# exactly as above. No full stop.
headline-conforms = Kwa mujibu wa ASAE { $procedure }, vikomo viko katika sehemu ya { $section }.
headline-conforms-with-notes = Kwa mujibu wa ASAE { $procedure }, vikomo viko katika sehemu ya { $section }; maelezo yako hapa chini.
# Chini ya mojawapo ya hizo mbili: zinategemea nini.
headline-conforms-rests-on = Hayakukaguliwa na yeyote: vikomo, vilivyoandikwa kwa kumbukumbu ya kichwani ya kiwango, na mahali pa vihisi, ambapo ni kauli ya mpimaji.
headline-indicative = Haikidhi ASAE { $procedure }: tazama kasoro zilizo hapa chini
headline-indicative-missing = Haikidhi ASAE { $procedure }; bado vinahitajika: { $missing }
headline-indicative-missing-too = Haikidhi ASAE { $procedure }: tazama kasoro. Pia vinahitajika: { $missing }
headline-not-valid = Kwa mujibu wa vipimo hivi, maji yangepata joto zaidi ya mwanga wa jua unaoangukia jiko. Kagua eneo la kupokea mwanga, mzigo na vizio.
# { $power }: "55 ± 12 W (not 95 %)".
headline-no-rating-balance = Mizania ya joto inatoa { $power } kwa 700 W/m² na 50 K: ni elekezi, si tathmini ya kiwango (sehemu ya { $section }).
headline-no-rating-missing = Haina tathmini kwa mujibu wa ASAE { $procedure }; bado vinahitajika: { $missing }
headline-without-rating = Haina tathmini kwa mujibu wa ASAE { $procedure }: tazama kasoro zilizo hapa chini
headline-counts = { counted-used } (angalau { $least_intervals }) · { counted-days } ({ $least_days }) · R² { $r_squared } ({ $least_r_squared })
headline-counts-no-line = { counted-used } (angalau { $least_intervals }) · { counted-days } ({ $least_days })
# What is still missing.
missing-intervals = { $intervals ->
    [one] kipindi { $intervals } zaidi
   *[other] vipindi { $intervals } zaidi
}
missing-days = { $days ->
    [one] siku { $days } zaidi
   *[other] siku { $days } zaidi
}
missing-intervals-and-days = { missing-intervals } na { missing-days }

## Page one: the number

headline-label = Nguvu sanifu ya kupikia Ps(50)
# Beside the number and its ±; 95 % is the level of confidence.
# As in English
headline-unit = W (95 %)
headline-unit-one-day = W (si 95 %)
headline-what-it-is = Nguvu ya jaribio, ikiwa imebadilishwa kwa uwiano hadi 700 W/m² kama ASAE { $procedure } inavyofafanua, maji yakiwa { $difference } juu ya hewa
page-no-rating = hakuna tathmini
# { $way }: "by a clear-sky model", "from the log of a station nearby" and the like.
headline-irradiance-estimated = mnururisho umekadiriwa { $way }
headline-horizontal = mnururisho ulipimwa katika bapa la mlalo, si kwa kulielekea jua
headline-plane-not-stated = bapa la kihisi cha mnururisho halikutajwa
headline-one-day = jaribio la siku moja: tofauti za siku kwa siku hazimo katika ±
headline-days-not-in-spread = hakuna siku inayoweza kuachwa nje: tofauti za siku kwa siku hazimo katika ±
# What of the ± comes from what. These lines stand below the number, in small letters.
headline-extrapolated = imekisiwa nje ya vipimo: 50 K ziko nje ya yaliyoonekana
headline-interval = masafa ya 95 %: { $low } hadi { $high } W
headline-interval-one-day = masafa bila siku, si masafa ya 95 %: { $low } hadi { $high } W
fact-delivers = Hutoa
fact-took-up = { $power } ± { $half_width } W kwa maji yaliyo { $difference } juu ya hewa, katika mnururisho wa jaribio wa { $irradiance } W/m²
fact-took-up-estimated = { $power } ± { $half_width } W kwa maji yaliyo { $difference } juu ya hewa, katika mnururisho unaokadiriwa kuwa { $irradiance } W/m²
fact-lost = hakuna joto: maji yaliyo { $difference } juu ya hewa yalipoteza { $power } ± { $half_width } W katika mnururisho wa jaribio wa { $irradiance } W/m²
fact-scaled = katika 700 W/m², { $power } ± { $half_width } W kwa mizania ya joto, ambayo hubadilisha pato kwa uwiano lakini si upotevu (sehemu ya { $section })
fact-scaled-loses = upotevu wa { $power } ± { $half_width } W katika 700 W/m² kwa mizania ya joto (sehemu ya { $section })
fact-good = Ubora
fact-per-area = { $power } ± { $half_width } W kwa kila m² ya eneo la kupokea mwanga, { $percent } % ya 700 W/m². Zilizochapishwa za majiko mengine, kwa mbinu nyingine, kwa makadirio tu: { $range } W/m² (tazama { summary-title }).
fact-kitchen = Jikoni
fact-heats = maji { $amount } { $journey } kwa takriban { $time } ({ $range }), katika { $irradiance } W/m²
fact-may-not-heat = huenda maji yasiweze kupashwa { $journey } katika { $irradiance } W/m²
fact-does-not-heat = maji hayawezi kupashwa { $journey } katika { $irradiance } W/m²
fact-dry = Chombo kitupu
fact-sure = Uhakika
fact-parts = Vifaa ni { $instruments } % ya mraba wake (sehemu ya { $section }).
fact-parts-assumed = Vifaa, baadhi vikiwa vimekisiwa, ni { $instruments } % ya mraba wake (sehemu ya { $section }).

## Page one: the rating in plain words

# As in English
headline-two-kilograms = 2 kg
headline-heat-ends = joto lenye manufaa huishia karibu na { $end } ({ $range })
headline-heat-ends-or-boils = joto lenye manufaa huishia karibu na { $end } ({ $range }, ambapo maji huchemka)
headline-boils-first = bado hupasha maji yanapochemka
# From where to where water is heated. { $degrees } is the next message with its unit.
journey = kutoka { $degrees }
journey-degrees = { $start } hadi { $target }
journey-to-boiling = kutoka { $start } hadi kuchemka ({ $boiling } hapa)
# { $result } as in stagnation-result.
headline-dry = Chombo kikavu kilifika { $difference } juu ya hewa katika { $irradiance } W/m²: { $result } (sehemu ya { $section }).

## Page one: figure, findings, conditions, caution

# The line with its numbers: Ps = 201 W − 1.88 W/K · Td.
# As in English
equation-falling = Ps = { $intercept } W − { $slope } W/K · Td
# As in English
equation-rising = Ps = { $intercept } W + { $slope } W/K · Td
# No full stop.
power-line-facts = { $equation }; R² = { $r_squared }; { counted-used } katika { counted-days }, Td kuanzia { $lowest } hadi { $highest } K
# R² of points that all have the same power.
undefined = haijafafanuliwa
figure-title-falling = Nguvu sanifu ya kupikia hupungua maji yanapopata joto: { $equation }, R² { $r_squared }
figure-title-falling-estimated = Nguvu sanifu ya kupikia kwa mnururisho uliokadiriwa hupungua maji yanapopata joto: { $equation }, R² { $r_squared }
figure-title-rising = Nguvu sanifu ya kupikia haipungui maji yanapopata joto: { $equation }, R² { $r_squared }
figure-title-rising-estimated = Nguvu sanifu ya kupikia kwa mnururisho uliokadiriwa haipungui maji yanapopata joto: { $equation }, R² { $r_squared }
figure-title-no-line = Hakuna mstari unaoweza kulinganishwa na data
figure-title-not-valid = Nguvu sanifu ya kupikia kama vipimo vinavyoitoa; si halali, kwa hiyo hakuna mstari uliochorwa
# In the figure of page one, beside what they name.
# As in English
figure-used = { counted-used }
figure-aside = kando: { $count }
figure-aside-most = mara nyingi: { $reason } ({ $count })
# Where another reason is as frequent.
figure-aside-among = miongoni mwao: { $reason } ({ $count })
figure-band-dark = nyeusi zaidi: mtawanyiko na siku
figure-band-light = hafifu: pamoja na vifaa (95 %)
# Where no other day tells how days differ.
figure-band-dark-one-day = nyeusi zaidi: mtawanyiko, bila siku
figure-band-light-one-day = hafifu: pamoja na vifaa; si 95 %
# Read out to those who do not see the figure.
# As in English
power-line-caption = { $facts }.
power-line-alt = Mchoro wa nukta wa nguvu sanifu ya kupikia kwa wati dhidi ya tofauti ya halijoto kati ya maji na mazingira kwa kelvini. { $facts }; vilivyowekwa kando: { $aside }. Mstari unaonyesha wati { $power } kwa kelvini 50.
power-line-estimated = Mnururisho umekadiriwa: { $text }
no-line-facts = Hakuna mstari unaoweza kuchorwa: { counted-used }, na { $aside } vilivyowekwa kando
not-valid-facts = { counted-used }, na { $aside } vilivyowekwa kando; si halali, kwa hiyo hakuna mstari uliochorwa
no-line-alt = Mchoro wa nukta wa nguvu sanifu ya kupikia dhidi ya tofauti ya halijoto: { $facts }.
page-findings = Kasoro, na jinsi ya kuzirekebisha
# Below those that page one has room for.
page-findings-next = Kasoro zote, na jinsi ya kuzirekebisha, ziko kwenye ukurasa unaofuata.
# Where the rating conforms with notes.
page-findings-notes = Maelezo, na yatakayoyaondoa
conditions-title = Masharti: yanayoruhusiwa (kivuli), yaliyoonekana katika vipindi vilivyotumika (pau na namba), vipindi vilivyowekwa kando (kulia)
conditions-track = { $name }: { $observed }, kando: { $count }
brief-irradiance = Mnururisho (irradiance)
brief-irradiance-change = Mabadiliko ya mnururisho ndani ya kipindi
brief-wind = Wastani wa upepo, na upepo uliodumu
brief-ambient = Wastani wa halijoto ya mazingira
brief-water-above = Maji juu ya mazingira, ncha zote mbili
brief-water-below = Maji chini ya kuchemka, ncha zote mbili
# { $what }: one of the next or of those above, of irradiance.
brief-estimated = { $what }, ya kukadiria
brief-water-lowest = Halijoto ya chini kabisa ya maji
brief-water-highest = Halijoto ya juu kabisa ya maji
brief-solar-time = Wakati wa jua
page-before-you-cook = Kabla hujapika.
headline-caution = Nyuso zenye moto na mvuke huunguza, kitovu cha mwanga kinaweza kupofusha na kuwasha moto, na tathmini hii haisemi lolote kuhusu usalama wa chakula. Soma tahadhari zilizo katika sehemu ya { $section } kabla hujapika. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.
headline-caution-no-rating = Nyuso zenye moto na mvuke huunguza, kitovu cha mwanga kinaweza kupofusha na kuwasha moto, na namba hizi hazisemi lolote kuhusu usalama wa chakula. Soma tahadhari zilizo katika sehemu ya { $section } kabla hujapika. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.
# What others measured, on page two, to hold a rating against.
yardstick-own = Ps(50) kwa kila m² ya eneo la kupokea mwanga: { $power } ± { $half_width } W/m², { $percent } % ya 700 W/m².
yardstick-parabolic = Zilizochapishwa, zinazojulikana kutokana na muhtasari pekee: jiko la parabola, { $value } W/m² (ufanisi wa nishati wa 2.8 hadi 15.7 % ukihesabiwa kwa 700 W/m²; { $source });
yardstick-box = jiko la sanduku, { $value } W/m² (27 W kutoka 0.408 m² katika 750 W/m² na zaidi; { $source }).
yardstick-caution = Hakuna kati ya hayo lililotathminiwa kwa ASAE S580.1: yanaonyesha ukubwa wa takriban tu na hayatathmini chochote.

## Findings: what keeps a rating from conforming, and what would mend it
#
# A short clause without a full stop; the program sets a capital letter first.

finding-too-few-intervals = idadi iliyotumika ni { counted-intervals }, kiwango kinataka { $least }
finding-too-few-intervals-own = idadi iliyotumika ni { counted-intervals }, kikomo binafsi cha kampeni kinataka { $least }
finding-too-few-intervals-remedy = { missing-intervals } vinavyoweza kutumika
finding-too-few-days = vipindi vilivyotumika ni vya { counted-days }, kiwango kinataka { $least }
finding-too-few-days-own = vipindi vilivyotumika ni vya { counted-days }, kikomo binafsi cha kampeni kinataka { $least }
finding-too-few-days-remedy = jaribio katika { missing-days }
finding-no-rating = hakuna mstari unaoweza kuchorwa: vinahitajika vipindi vitatu vilivyotumika vyenye mnururisho, kwa tofauti mbalimbali za halijoto
finding-no-rating-remedy = vipindi zaidi vinavyoweza kutumika, kuanzia halijoto ya mazingira hadi karibu na kuchemka
# { $shortest }, { $longest }: "9", "11".
finding-no-rating-remedy-intervals = pima maji kila dakika { $shortest } hadi { $longest }, au kila moja, mbili au tano, hadi karibu na kuchemka
finding-no-rating-remedy-irradiance = pima mnururisho; bila huo nguvu haiwezi kusanifishwa
finding-r-squared-low = R² ni { $r_squared }, chini ya { $least }; kiwango kinataka maelezo tu; ripoti hii haisemi kwamba inakidhi
finding-r-squared-low-own = R² ni { $r_squared }, chini ya kikomo binafsi cha kampeni cha { $least }
finding-r-squared-low-remedy = kulielekeza jiko kwa uthabiti zaidi, anga safi zaidi na upepo mdogo zaidi; kihisi kisichogusa sufuria
finding-r-squared-low-remedy-resolution = kipimajoto cha maji chenye upambanuzi mdogo zaidi: upambanuzi wake ndio sehemu kubwa ya mtawanyiko
# Ya mstari ambao nukta zake zinaufuata vizuri.
finding-r-squared-low-remedy-flat = R² ni ndogo kwa sababu nguvu haipungui sana joto linapopanda, si kwa sababu ya mtawanyiko; pima namba kwa ± yake; masafa mapana zaidi ya halijoto ya maji huinua R²
finding-line-not-falling = nguvu haipungui maji yanapozidi kupata joto, ingawa maji yenye joto zaidi hupoteza joto zaidi
finding-line-not-falling-remedy = hakikisha kwamba halijoto ya maji ni ya maji yenyewe, na upime masafa mapana zaidi ya halijoto
finding-no-useful-heat = mstari unaonyesha { $power } W kwa { $difference }: hapo maji hupoteza joto
finding-no-useful-heat-remedy = hakikisha kwamba vipimo ni vya maji yanayopashwa, jiko likiwa limeelekezwa kwenye jua
finding-extrapolated = { $difference } ziko nje ya tofauti za halijoto zilizoonekana, { $observed }
finding-extrapolated-remedy = vipindi vinavyotumika pande zote mbili za { $difference }
# { $runs }: a list of finding-load-off-run.
finding-load-off = mzigo umekengeuka kwa zaidi ya { $tolerance } % kutoka { $load } katika { $runs }
# As in English
finding-load-off-run = { $run } ({ $load })
finding-load-off-remedy = pima kwa mizani { $load } za maji kwa kila m² ya eneo la kupokea mwanga, au sahihisha eneo hilo
# In the findings that follow, { $runs } is a list of the names of runs.
finding-wind-not-measured = upepo haukupimwa katika { $runs }
finding-wind-not-measured-remedy = pima upepo kando ya jiko, kwa kimo chake
finding-wind-estimated = upepo ulikadiriwa kwa macho katika { $runs }, kwa usahihi wa namba moja ya kipimo cha Beaufort
finding-irradiance-estimated = mnururisho haukupimwa kwenye jiko katika bapa lililo pembemraba na miale ya jua, bali umekadiriwa { $way }
finding-irradiance-estimated-remedy = pima mnururisho kando ya jiko, kwa kihisi kinacholielekea jua
finding-irradiance-missing = mnururisho haukupimwa katika { $runs }, ambazo vipindi vyake haviwezi kusanifishwa na havimo katika mstari
finding-irradiance-missing-remedy = pima mnururisho katika bapa lililo pembemraba na miale ya jua
finding-irradiance-horizontal = mnururisho ulipimwa katika bapa la mlalo; kiwango kinataka bapa lililo pembemraba na miale ya jua, ambako kwa kawaida huwa mkubwa zaidi, kwa hiyo pengine tathmini ni ya juu mno
# estimate = "from-horizontal" is written in the campaign file and stays as it is.
finding-irradiance-horizontal-remedy = funga kihisi ili kilielekee jua kama jiko linavyolielekea; hadi hapo faili ya kampeni inaweza kuomba vipimo vyake vigeuzwe kuelekea jua, kadirio
finding-irradiance-plane-not-stated = bapa la kihisi cha mnururisho halikutajwa; kiwango kinataka bapa lililo pembemraba na miale ya jua, nalo ndilo lililokisiwa
# plane = "normal" na [instruments.irradiance] ni sehemu za faili ya kampeni na hubaki zilivyo.
finding-irradiance-plane-not-stated-remedy = taja chini ya [instruments.irradiance] jinsi kihisi kilivyoshikwa: plane = "normal" kikiwa kililielekea jua, plane = "horizontal" kikiwa kililala bapa
finding-impossible-gain = joto lililopatikana katika { counted-used } ni zaidi ya mwanga wa jua uliopokewa; cha kwanza kilipata { $power } W kutoka { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-gain-estimated = joto lililopatikana katika { counted-used } ni zaidi ya mwanga wa jua uliopokewa, kupita utovu wa uhakika wa mnururisho uliokadiriwa (± { $percent } %); cha kwanza kilipata { $power } W kutoka { $sunlight } W
finding-impossible-gain-remedy = kagua uzito wa maji, eneo la kupokea mwanga, na vizio vya halijoto na mnururisho
finding-impossible-rating = tathmini ya { $power } W ni zaidi ya mwanga wa jua unaoangukia eneo la kupokea mwanga kwa { $irradiance } W/m², { $sunlight } W
# { $percent }: how far the estimate may be off, for 95 %.
finding-impossible-rating-estimated = tathmini ya { $power } W ni zaidi ya mwanga wa jua unaoangukia eneo la kupokea mwanga kwa { $irradiance } W/m², { $sunlight } W, kupita utovu wa uhakika wa mnururisho uliokadiriwa (± { $percent } %)
finding-impossible-rating-remedy = kagua vizio vya halijoto, eneo la kupokea mwanga na uzito wa maji
finding-gain-beyond = joto lililopatikana katika { counted-used } ni zaidi ya lile ambalo mnururisho unaeleza; cha kwanza kilipata { $power } W kutoka { $sunlight } W
finding-gain-beyond-remedy = kagua uzito wa maji, eneo la kupokea mwanga na vizio, na upime mnururisho kwa kihisi kinacholielekea jua
# { $limits }: a list of finding-own-limit.
finding-requirement-relaxed = vikomo binafsi vilivyolegezwa kuliko takwa: { $limits }
finding-recommendation-relaxed = vikomo binafsi vilivyolegezwa kuliko pendekezo: { $limits }
finding-limit-tightened = vikomo binafsi vikali kuliko vya kiwango: { $limits }
finding-guard = ukanda wa tahadhari wa utovu uliopanuliwa wa uhakika katika kila kikomo (kiwango: hakuna)
# { $what }: one of the messages that begin with limit-; { $practice }: an amount, or
# finding-practice-limit where the practice limits something else.
finding-own-limit = { $what } { $value } (kiwango: { $practice })
# As in English
finding-practice-limit = { $what } { $value }
# [limits] is a part of the campaign file and stays as it is.
finding-own-limit-remedy = rudi kwenye vikomo vya kiwango: futa hivi chini ya [limits] katika faili ya kampeni
finding-excluded-by-tester = mpimaji aliondoa { counted-intervals }
finding-excluded-by-tester-remedy = hakuna la kufanya ikiwa sababu iliyorekodiwa ni ya kweli

## What was tested

section-tested = Kilichojaribiwa
page-instruments = Vifaa vya kupimia
page-instruments-quantity = kinachopimwa
page-instruments-instrument = kifaa
page-instruments-uncertainty = utovu wa uhakika

## Conditions

section-conditions = Masharti
# Headers of the table.
page-conditions-condition = sharti
page-conditions-limit = kikomo
page-conditions-short-name = jina fupi
page-conditions-standing = hadhi
page-conditions-observed = yaliyoonekana
page-conditions-set-aside = kando
# What is limited. Also within findings.
limit-water-above-ambient = maji juu ya wastani wa mazingira
limit-water-below-boiling = maji chini ya kiwango cha kuchemka cha mahali
limit-water-temperature = halijoto ya maji
limit-ambient = wastani wa halijoto ya mazingira
limit-irradiance-lowest = mnururisho wa chini kabisa katika kipindi
limit-irradiance-highest = mnururisho wa juu kabisa katika kipindi
limit-irradiance-change = mabadiliko ya mnururisho katika kipindi
limit-wind-mean = wastani wa upepo
limit-wind-gust = upepo uliodumu kwa zaidi ya dakika kumi (huweka duru kando)
limit-solar-time-start = wakati wa jua mwanzoni
limit-solar-time-end = wakati wa jua mwishoni
limit-solar-time = wakati wa jua
limit-interval = urefu wa kipindi
limit-load = maji kwa kila m² ya eneo la kupokea mwanga
limit-load-tolerance = mzigo unavyoweza kutofautiana
limit-intervals = vipindi vilivyotumika
limit-days = siku zenye vipindi vilivyotumika
limit-r-squared = R² ya mstari
# How binding the practice makes a limit: "shall", "should". There is little room.
standing-requirement = takwa
standing-recommendation = pendekezo
# The campaign has a limit of its own in place of the practice's.
standing-own-requirement = binafsi (takwa)
standing-own-recommendation = binafsi (pendekezo)
# As in English
conditions-about = { $load } ± { $tolerance } %
conditions-no-line = hakuna mstari
# Of gusts.
conditions-never = kamwe
conditions-gust = kwa si zaidi ya { $time }
# Intervals were formed, and none of them is used.
conditions-none-used = hakuna kilichotumika
conditions-no-interval = hakuna kipindi
conditions-not-measured = haikupimwa
conditions-observed = Yaliyoonekana: ya chini hadi ya juu kabisa ya vipindi vyote. Kipindi kinachovunja masharti kadhaa huhesabiwa chini ya kila moja. Majina mafupi: kama katika michoro na katika jedwali la vipindi.
conditions-r-squared = R² chini ya kikomo chake: kiwango kinataka maelezo tu; ripoti hii haisemi kwamba inakidhi.
# "Own" as in standing-own-requirement.
conditions-own = Vikomo vyenye alama "binafsi" ni vya kampeni yenyewe na vinakengeuka kiwango.
conditions-guard = Ukanda wa tahadhari unatumika: thamani huhesabiwa kuwa ndani ya kikomo tu ikiwa hivyo pamoja na utovu wake wote wa uhakika, kwa kanuni ya uamuzi iliyo mwishoni.

## Runs

section-runs = Duru
# How the figures of the runs are read: sentences one after the other.
# Of more runs than are all shown.
runs-shown = Kuna duru { $runs }, zaidi ya { $most }: zinaonyeshwa { $shown }, moja katika kila { $step }, ya mwisho, na zile za vipindi vyenye athari kubwa vilivyotajwa. Nyingine zimetajwa hapa chini kwa majina; mstari unategemea zote, na vipindi vyake vyote vimo katika { $file }. “runs_shown = "all"” chini ya [report] huonyesha kila duru.
page-runs-others = Duru zisizo na mchoro
runs-axes = Duru zote zina mihimili ileile.
runs-axes-but-clock = Duru zote zina mihimili ileile, isipokuwa ule wa saa.
runs-axes-own-start = Duru zote zina mihimili ileile; kila mhimili wa saa huanza na duru yake na una urefu sawa na mingine.
runs-shaded = Kivuli: vipindi vilivyotumika. Nukta nukta: vikomo.
runs-wind = Upepo: vipimo kwa mstari mwembamba, wastani wa vipindi kwa mnene.
runs-no-wind = Upepo haukupimwa.
runs-no-irradiance = Mnururisho haukupimwa.
runs-lanes = Chini: vipindi visivyotumika, kwa sababu, pamoja na idadi.
runs-aimed = Pembetatu: lilielekezwa tena, kwa maelezo ya rekodi.
runs-predicted = r.m.s.: halijoto ya maji iliyotabiriwa kutoa iliyopimwa.
run-title = Duru ya { $number }, { $date }
# How many intervals of how many are used: beside the title, as short as can be.
run-used = { $used }/{ $of } vilitumika
# Clauses below the figure of a run. { $water }: with its unit.
run-load = maji { $water }, { $load }
run-aimed = lilielekezwa kila { $minutes } min
# As in English
run-predicted = r.m.s. { $rms } K
# A note of the tester, who alone vouches for it.
run-tester = Mpimaji: { $note }
run-hole = Hakuna kipindi kuanzia { $from } hadi { $to }: hakuna vipimo viwili vya maji huko vilivyopishana kwa dakika { $shortest } hadi { $longest }.
# Read out to those who do not see the figure. { $irradiance }, { $wind }: the next messages.
run-alt = Michoro dhidi ya saa ya mahali kuanzia { $from } hadi { $to }: maji kati ya nyuzi { $coldest } na { $hottest } za Selsiasi pamoja na halijoto ya mazingira; { $irradiance }; { $wind }. Vilivyotumika na kutiwa kivuli: { $used } kati ya { counted-intervals }. { $predicted } { $aside }
run-alt-set-aside = Kando: { $reasons }.
run-alt-none-aside = Hakuna kilichowekwa kando.
# As in English
run-alt-aside = { counted-intervals }, { $reason }
run-alt-predicted = Halijoto ya maji iliyotabiriwa na iliyopimwa hutofautiana kwa kelvini { $rms }, kipeuo cha pili cha wastani wa miraba.
run-alt-not-predicted = Mstari hautabiri lolote kwa duru hii.
run-alt-aimed = Lilielekezwa tena mara { $times } kwa maelezo ya rekodi.
run-alt-aimed-once = Lilielekezwa tena mara moja kwa maelezo ya rekodi.
run-alt-irradiance = mnururisho kati ya wati { $lowest } na { $highest } kwa mita ya mraba
run-alt-no-irradiance = mnururisho haukupimwa
run-alt-wind = upepo kati ya mita { $lowest } na { $highest } kwa sekunde
run-alt-no-wind = upepo haukupimwa

## Intervals

section-intervals = Vipindi
# Headers of a table of ten narrow columns: as short as can be.
page-intervals-local = saa ya mahali
page-intervals-solar = ya jua
page-intervals-water = maji, °C
page-intervals-ambient = mazing., °C
page-intervals-irradiance = mnurur., W/m²
page-intervals-range = chini–juu
page-intervals-wind = upepo, m/s
# As in English
page-intervals-power = P, W
# As in English
page-intervals-difference = Td, K
# As in English
page-intervals-standardised = Ps, W
interval-no-irradiance = hakikusanifishwa: hakuna mnururisho
page-intervals-continued = inaendelea
intervals-shown = Vipindi vya duru { $shown } zinazoonyeshwa; vyote { $intervals } vimo katika { $file }.
intervals-note = Maji: mwanzoni na mwishoni mwa kipindi. Mnururisho: wastani, kisha kipimo cha chini hadi cha juu kabisa. P: nguvu ya kupikia. Td: wastani wa halijoto ya maji kutoa wastani wa halijoto ya mazingira. Ps: P iliyosanifishwa kwa 700 W/m².
intervals-dots = Nukta: kipindi hakikutumika, kwa sababu hiyo.
intervals-us = 1 K, kama tofauti ya halijoto, ni { $fahrenheit } °F.
# Why an interval is set aside. Also within headline-reason, after "because".
reason-water-below-window = maji yalikuwa bado karibu mno na halijoto ya mazingira
reason-water-above-window = maji yalikuwa karibu mno na kuchemka
reason-ambient-out-of-range = hewa ilikuwa baridi mno au yenye joto mno
reason-irradiance-low = jua lilikuwa dhaifu mno
reason-irradiance-high = jua lilikuwa kali mno
reason-irradiance-unsteady = jua lilikuwa likibadilikabadilika
reason-wind-high = upepo ulikuwa mkali mno
reason-outside-solar-window = ilikuwa mapema mno au kuchelewa mno katika siku ya jua
reason-reading-gap = vipimo vilikosekana
reason-excluded-by-tester = mpimaji aliuondoa muda huo
reason-not-cloudless = mpimaji hasemi kwamba anga lilikuwa bila mawingu
# Short names of the same: heads of narrow columns, up to 14 letters each, one word if possible.
lane-water-below-window = baridi
lane-water-above-window = moto
lane-ambient-out-of-range = hewa
lane-irradiance-low = hafifu
lane-irradiance-high = kali
lane-irradiance-unsteady = si thabiti
lane-wind-high = upepo
lane-outside-solar-window = saa
lane-reading-gap = pengo
lane-excluded-by-tester = kimeondolewa
lane-not-cloudless = anga
lane-not-normalised = bila mnurur.

## Regression and uncertainty

section-regression = Regresheni na utovu wa uhakika (uncertainty)
regression-none = Hakuna mstari unaoweza kuchorwa: vinahitajika angalau vipindi vitatu vilivyotumika vyenye mnururisho, kwa tofauti mbalimbali za halijoto.
regression-method = Miraba midogo kabisa ya kawaida ya Ps juu ya Td kwa vipindi vilivyotumika vya duru zote, kila kimoja kwa uzito sawa. P = m·c·(T2 − T1)/Δt ambapo c = 4186 J/(kg K) na muda ni ule uliopita kweli; Ps = P·700/G ambapo G ni wastani wa mnururisho wa kipindi; Td = wastani wa halijoto ya maji kutoa wastani wa halijoto ya mazingira. Wastani huzingatia uzito wa muda.
# Labels, and what stands beside them.
regression-line = mstari
regression-intercept = kikatizo a
regression-watts = { $value } W, kosa sanifu { $error } W
regression-slope = mteremko b
regression-watts-per-kelvin = { $value } W/K, kosa sanifu { $error } W/K
regression-residual = masalio
regression-residual-text = mchepuko sanifu { $deviation } W
regression-points = nukta
regression-points-text = { counted-intervals } katika { counted-days }, { counted-freedom }
residuals-caption = Masalio ya vipindi vilivyotumika, kwa siku: dhidi ya tofauti ya halijoto, dhidi ya saa, na dhidi ya kwantaili za mgawanyo wa kawaida (normal). Mistari ya vipandevipande: mara mbili ya mchepuko sanifu wake; kulia, mgawanyo wa kawaida wenyewe.
# Read out to those who do not see the figure.
residuals-alt = Masalio kuzunguka mstari kwa wati, dhidi ya tofauti ya halijoto kwa kelvini na dhidi ya saa ya mahali, alama moja kwa kila siku; mchepuko sanifu wati { $deviation }; { $outside ->
    [one] nukta { $outside } kati ya { $points } iko mbali na mstari kwa zaidi ya mara mbili ya huo.
   *[other] nukta { $outside } kati ya { $points } ziko mbali na mstari kwa zaidi ya mara mbili ya huo.
}
page-scatter = Athari za siku, uwiano wa majirani (autocorrelation), nukta zenye athari kubwa
page-uncertainty = Utovu wa uhakika wa Ps(50)
# Headers of a table of six columns.
page-uncertainty-source = chanzo
page-uncertainty-of-source = msingi
# Type A or B of the GUM.
page-uncertainty-type = aina
page-uncertainty-sensitivity = unyeti
# As in English
page-uncertainty-of-rating = u, W
# As in English
page-uncertainty-factor = k
page-uncertainty-part = mgawo wa ±²
section-heat-balance = Mizania ya joto
page-balance-quantity = kipimo
balance-what = Maji hupokea kile ambacho jiko linapata kutoka kwa jua kutoa kile ambacho linapoteza kwa hewa: P = g·G − u·Td, ambapo G ni mnururisho na Td ni tofauti ya halijoto. Hivyo nguvu inaweza kutajwa kwa mnururisho wowote. Tathmini hubadilisha upotevu kwa uwiano wa jua; mizania hii haifanyi hivyo.
# Above a column of values, where days are not in the ±, so that it is no 95 % range.
balance-spread = ± kwa 95 %: mtawanyiko, siku, vifaa
balance-spread-one-day = ± bila siku, si 95 %: mtawanyiko, vifaa
balance-gain = pato kutoka kwa jua, g
# As in English
balance-gain-text = { $value } m²
balance-loss = upotevu kwa hewa, u
# As in English
balance-loss-text = { $value } W/K
balance-power = nguvu kwa 700 W/m² na 50 K, 700·g − 50·u
# As in English
balance-power-text = { $value } W
balance-ratio = uwiano wa mwanga na joto (opto-thermal ratio), g/u
# As in English
balance-ratio-text = { $value } K m²/W
balance-ratio-none = hautajwi: huenda upotevu ni sifuri
acceptance = nusu ya pembe ya kupokea mwanga
acceptance-text = { $value }° ({ $lower }° hadi { $upper }°, 95 %)
acceptance-none = haijaonyeshwa
acceptance-rests-on = Nusu ya pembe ya kupokea mwanga ni kiasi ambacho jua linaweza kuwa nje ya mhimili kabla ya sehemu moja ya kumi ya pato kupotea. Imekadiriwa kutokana na jinsi nguvu inavyopungua kati ya nyakati za kuelekeza zilizoandikwa katika rekodi: vipande { $stretches }, jua likiwa hadi { $angle }° nje ya mhimili. Masafa yake yana mtawanyiko, maumbo yanayowezekana ya upungufu huo, na usahihi wa nyakati zilizoandikwa (mazoea ya kawaida).
acceptance-few = Hakuna nusu ya pembe ya kupokea mwanga: vipande vinavyofaa kati ya nyakati za kuelekeza zilizoandikwa ni { $teeth }, na vinahitajika { $least }, kila kimoja chenye angalau vipimo { $readings } vya maji na { $angle }° ambazo jua linasonga.
acceptance-few-remedy = Andika kila kuelekeza katika rekodi, pima maji kila dakika tano au mara nyingi zaidi, na uache jua lisonge nyuzi chache kabla ya kuelekeza tena.
acceptance-not-shown = Hakuna nusu ya pembe ya kupokea mwanga iliyoonyeshwa: katika vipande { $teeth } kati ya kuelekeza, jua likiwa hadi { $angle }° nje ya mhimili, pato halipungui zaidi ya mtawanyiko unavyoeleza.
acceptance-not-shown-remedy = Acha jiko bila kulisogeza kwa saa moja, mara mbili au zaidi, maji yakiwa na halijoto thabiti chini ya anga safi: jua husonga takriban 15° kwa muda huo. Kaa kando yake: kitovu cha mwanga huhama kutoka kwenye sufuria na kinaweza kuunguza au kupofusha mtu, na kuwasha moto chochote kinachokutana nacho.
# As in English
balance-value = { $value } ± { $half_width }
# { $range }: lowest and highest of the intervals.
balance-rests-on = Inategemea { counted-intervals } katika { counted-days } vyenye vipimo vizuri, kwa { $mean } W/m² kwa wastani ({ $range } W/m²). Vikomo vya hali ya hewa na saa havitumiki hapa; dirisha la halijoto ya maji, muda ulioondolewa na mpimaji na, pale ambapo mnururisho umekadiriwa, anga bila mawingu hutumika.
balance-rests-on-steps = Inategemea hatua { $steps } kati ya vipimo vya maji, katika { counted-days }, kwa { $mean } W/m² kwa wastani ({ $range } W/m²). Vikomo vya hali ya hewa na saa havitumiki hapa; dirisha la halijoto ya maji, muda ulioondolewa na mpimaji na, pale ambapo mnururisho umekadiriwa, anga bila mawingu hutumika.
balance-counts-vessels = Hapa pato, upotevu na nguvu zinajumuisha uwezo wa vyombo kuhifadhi joto, { $heat } J/K: { $basis }. Tathmini na sehemu ya upishi ni za maji pekee.
balance-scaling-adds = Kwa upotevu huu, kubadilisha tathmini kwa uwiano kutoka { $mean } W/m² hadi 700 W/m² kunaongeza { $power } W kwa Ps(50).
balance-scaling-takes = Kwa upotevu huu, kubadilisha tathmini kwa uwiano kutoka { $mean } W/m² hadi 700 W/m² kunapunguza { $power } W kwa Ps(50).
balance-caption = Ukanda ni wa bajeti; pale ambapo Monte Carlo hufika mbali zaidi, jedwali lina ncha iliyo mbali zaidi.
balance-caption-one-day = Ukanda hauna tofauti za siku kwa siku, kwa hiyo si ukanda wa 95 %; ni wa bajeti, na pale ambapo Monte Carlo hufika mbali zaidi, jedwali lina ncha iliyo mbali zaidi.
# Behind a caption.
balance-beyond = Vipindi vilivyo nje ya kingo: { $count }.
# Read out to those who do not see the figure.
balance-alt = Mchoro wa nukta wa nguvu kwa mnururisho, kwa mita za mraba, dhidi ya tofauti ya halijoto kwa mnururisho, kutoka { $lowest } hadi { $highest } kelvini mita ya mraba kwa wati. Nukta: { counted-intervals } ambavyo mstari umelinganishwa navyo; misalaba: vingine { $others }. Mstari unaanza kwa mita za mraba { $gain }, bila tofauti ya halijoto; upotevu ni wati { $loss } kwa kelvini.
# Axes and key of the figure: there is little room.
balance-axis-difference = tofauti ya halijoto kwa mnururisho, Td/G, K m²/W
balance-axis-power = nguvu kwa mnururisho, P/G, m²
balance-key-used = vilivyolinganishwa ({ $count })
balance-key-others = vingine ({ $count })
balance-key-line = g − u·Td/G, ukanda wa 95 % pamoja na vifaa
balance-key-line-one-day = g − u·Td/G, ukanda bila siku, pamoja na vifaa
balance-none-irradiance = Pato na upotevu haviwezi kukokotolewa: mnururisho haukupimwa.
balance-none-few = Pato na upotevu haviwezi kukokotolewa: vinahitajika angalau vipindi vitatu vyenye vipimo vizuri; vilivyopatikana: { $intervals }.
balance-none-alike = Pato na upotevu haviwezi kutenganishwa: tofauti ya halijoto na mnururisho vilibaki karibu na uwiano uleule katika vipindi vyote.
balance-source = Miraba midogo kabisa ya kawaida ya P juu ya G na Td bila kikatizo, kila kipindi kwa uzito sawa. Kufuata Funk na Larson 1998 (Solar Energy 62, 63–68); si jaribio kwa ISO 9806. Uwiano wa mwanga na joto: Lahkar, Bhamu na Samdarshi 2012 (Applied Energy 99, 491–495).

## Cooking

section-cooking = Maana yake kwa upishi
page-cooking-water = maji
# [journey] is put in by the program: "from 20 to 95 °C", the message journey.
page-cooking-time = muda [journey]
page-cooking-range = masafa
page-cooking-boiling = hadi kuchemka
page-foods-food = chakula
page-foods-specific-heat = joto mahususi
page-foods-cooked = hupikwa kwa
page-foods-amount = kiasi
page-foods-range = masafa
page-year = Siku zisizo na mawingu mwaka mzima
page-fuel = Nishati ya kupikia inayookolewa
page-dry = Chombo kikavu
page-dry-date = tarehe
page-dry-plateau = kilele tulivu
page-dry-air = hewa
page-dry-irradiance = mnururisho
page-dry-difference = tofauti kwa kila W/m²
page-dry-notes = maelezo
# As in English
stagnation-date-and-time = { $date }, { $time }
stagnation-irradiance-estimated = { $irradiance } W/m², umekadiriwa
# As in English
stagnation-result = { $difference } ± { $half_width } K m²/W
# { $usual }: "190 °C".
stagnation-note = Halijoto ya juu kabisa iliyotulia ya chombo kitupu cheusi juu ya mazingira, gawanya kwa mnururisho; ± kwa 95 %, kipimajoto cha oveni ndani ya ± 10 K pale ambapo utovu wa uhakika haukutajwa. Huhusisha upotevu wa joto na mwanga wa jua na si nguvu ya kupikia. Mullick, Kandpal na Saxena 1987 hutumia uwiano huu kwa majiko ya sanduku; kwa majiko mengine hulinganisha tu yanayofanana. Chombo kitupu kinaweza kuiva kwa joto hadi kung'aa, kupasuka au kupoteza mpako wake: usikiache kamwe bila mwangalizi.
page-assumed = Makisio

## Cautions

section-cautions = Tahadhari

## Provenance

section-provenance = Mikengeuko, maelezo na asili
page-deviations = Mikengeuko
page-tester-notes = Maelezo ya mpimaji
page-notices = Ilani kutokana na usomaji wa rekodi
page-logs = Jinsi rekodi zilivyosomwa
page-made-with = Imetengenezwa kwa
page-sources = Yasiyokaguliwa
# SHA-256: digits that change when a file changes.
page-inputs = Faili, pamoja na SHA-256 zake
# A photo among the inputs.
input-photo = { $file }, kama ilivyo katika ripoti hii
# { $file }: its name, or input-photo.
input-outside = { $file }, kutoka nje ya folda ya kampeni
# Rekodi ndefu mno kuwekwa ndani; { $file }: jina lake, au input-outside.
input-beside = { $file }, haimo ndani ya ripoti hii bali kando yake (baiti { $bytes })
inputs-beside = { $count ->
    [one] Rekodi { $count } yenye zaidi ya MB { $limit } haimo ndani ya PDF hii. Itunze pamoja na PDF, katika folda moja na kwa jina lake: “simmerline verify” inaihitaji, na huikubali tu kama SHA-256 yake ndiyo iliyochapishwa hapa. “--logs DIR” hutaja folda nyingine. “report --carry-all” huweka rekodi ya aina hiyo ndani.
   *[other] Rekodi { $count } zenye zaidi ya MB { $limit } hazimo ndani ya PDF hii. Zitunze pamoja na PDF, katika folda moja na kwa majina yake: “simmerline verify” inazihitaji, na huikubali kila moja tu kama SHA-256 yake ndiyo iliyochapishwa hapa. “--logs DIR” hutaja folda nyingine. “report --carry-all” huweka rekodi za aina hiyo ndani.
}

# What was tested, with what, and by whom; the uncertainty line by line; provenance.

## What the campaign file does not say

not-stated = bila kutajwa

## Kinds of cooker, shapes of aperture

# Each stands first in its line.
cooker-box = Jiko la sanduku
cooker-panel = Jiko la paneli za kuakisi
cooker-concentrating = Jiko la kukusanya miale
cooker-tube = Jiko la mrija
aperture-circle = duara, kipenyo { $diameter }
aperture-rectangle = mstatili, { $width } kwa { $height }
# Across corners: diameter of the circle through the corners.
aperture-regular-polygon = poligoni sawa, pande { $sides }, { $across } kati ya pembe
aperture-outline = umbo la nukta { $points }
# { $shape }: one of the four above. The beam is the light that comes straight from the sun.
aperture-off-normal = { $shape }, miale iko { $degrees }° nje ya pembemraba yake

## Ways to estimate irradiance
#
# Each goes on after "irradiance estimated", and also stands alone after a comma.

estimated-clear-sky = kwa modeli ya anga safi (Ineichen na Perez 2002)
estimated-from-horizontal = kutokana na kihisi kilicholazwa (Erbs, Klein na Duffie 1982)
estimated-station = kutokana na rekodi ya kituo cha karibu
estimated-solar-panel = kutokana na mkondo wa mzunguko mfupi wa paneli ya sola

## Classes of instruments

# Also within budget-assumed and notice-instrument-taken: "assumed a kitchen scale".
class-pyranometer-a = piranomita ya daraja A
class-pyranometer-b = piranomita ya daraja B
class-pyranometer-c = piranomita ya daraja C
class-reference-cell = seli rejea
class-solar-panel = paneli ya sola kwa mkondo wake wa mzunguko mfupi
class-hand-held-meter = mita ya mkononi
class-thermocouple-t-1 = themokapo aina T, daraja 1
class-thermocouple-t-2 = themokapo aina T, daraja 2
class-thermocouple-k-1 = themokapo aina K, daraja 1
class-thermocouple-k-2 = themokapo aina K, daraja 2
class-thermocouple-j-1 = themokapo aina J, daraja 1
class-thermocouple-j-2 = themokapo aina J, daraja 2
class-pt100-a = Pt100, daraja A
class-pt100-b = Pt100, daraja B
class-kitchen-thermometer = kipimajoto cha jikoni
class-oven-dial = kipimajoto cha oveni chenye mshale
class-measuring-jug = jagi la kupimia
class-platform-scale = mizani ya jukwaa
class-kitchen-scale = mizani ya jikoni
class-watch = saa ya kawaida, inayosomwa na mtu
class-logger = saa ya kifaa cha kurekodi
# What the uncertainty of a class follows from. 95 %: level of confidence.
basis-for-95-percent = ± { $limit } % kwa 95 %
basis-within-percent = ndani ya ± { $limit } %
basis-within-kelvin = ndani ya ± { $limit }
basis-within-kelvin-read = ndani ya ± { $limit }, husomwa kwa hatua za { $step }
basis-within-seconds = ndani ya ± { $limit } s

## What was tested: the line under the title

# These four stand after each other, with a dot between them.
# As in English
subtitle-cooker = { $cooker }, { $area }
# As in English
subtitle-site = { $site }, { $elevation }
subtitle-tester = lilijaribiwa na { $tester }
# First and last day of the test: "16 to 19 September 2026", { $first } only a number.
dates-of-a-month = { $first } hadi { $last }
# "28 September to 3 October 2026".
dates-of-a-year = { $day } { $month } hadi { $last }
dates = { $first } hadi { $last }

## What was tested
#
# Labels stand at the left in a column of about 18 letters; longer ones break.

tested-photo = Jiko kama lilivyojaribiwa.
# Read out to those who do not see it.
tested-photo-alt = Picha ya jiko { $cooker }
tested-cooker = Jiko
tested-name = jina
tested-type = aina
tested-area = eneo la kupokea mwanga
# As in English
tested-aperture = uwazi wa jiko
tested-description = maelezo
tested-mass = uzito
tested-cost = gharama
# { $currency }: as the tester wrote it.
# As in English
tested-cost-text = { $cost } { $currency }
tested-cost-no-currency = { $cost } (sarafu haikutajwa)
tested-load = Mzigo
tested-water = maji
tested-per-area = kwa eneo la kupokea mwanga
tested-per-area-text = { $load } (kiwango: { $practice })
tested-per-area-own = { $load } (kikomo binafsi: { $own })
tested-vessels = vyombo
tested-site = Mahali
tested-position = viwianishi
# As in English
tested-position-text = { $latitude }, { $longitude }, { $elevation }
tested-north = { $degrees }° Kaskazini
tested-south = { $degrees }° Kusini
tested-east = { $degrees }° Mashariki
tested-west = { $degrees }° Magharibi
# { $boiling }: "95.2 °C".
tested-boiling = maji huchemka kwa
tested-boiling-by-pressure = { $boiling }, kutokana na mgandamizo wa hewa uliopimwa wa { $pressure } hPa
tested-boiling-by-elevation = { $boiling }, kutokana na mwinuko
tested-time-zone = ukanda wa saa
tested-test = Jaribio
tested-method = mbinu
# The title of the standard stands in English.
# As in English
tested-method-text = ASAE { $procedure }, testing and reporting solar cooker performance
tested-dates = tarehe
tested-dates-text = { $dates }, { $runs ->
        [one] duru { $runs }
       *[other] duru { $runs }
    }
tested-tracking = kufuata jua
# { $minutes }: a number, or a list of numbers.
tested-tracking-text = lilielekezwa upya kila { $minutes } min
# Mark or serial number of the cooker.
tested-identification = utambulisho
# In which condition the cooker was when it was tested.
tested-condition = hali
# When the cooker came to the tester.
tested-received = lilipokelewa
# Heading: what surrounded the used intervals.
tested-environment = Mazingira ya vipindi vilivyotumika
environment-ambient = hewa ya mazingira
environment-irradiance = mnururisho
environment-wind = upepo
# A unit follows.
environment-numbers = wastani { $mean }, vipimo { $range }
environment-none = hakuna kipindi kilichotumika
tested-place = mahali pa jaribio
# Heading: who answers for the report, for whom it is, and what others contributed.
tested-parties = Maabara na mteja
tested-laboratory = maabara
tested-laboratory-not-stated = jina na anwani hazikutajwa
tested-authorised = imeidhinishwa na
tested-contact = mawasiliano ya mteja
# What of the data the client supplied, and not the tester.
tested-client-data = kutoka kwa mteja
# How the cooker was chosen from among several.
tested-sampling = sampuli
tested-not-sampled = bila kutajwa; limechukuliwa kama lilivyopokelewa, bila kuchaguliwa kwa sampuli
# Results that somebody else measured.
tested-others = matokeo ya nje
tested-others-station = mnururisho, kutoka rekodi ya kituo cha jirani
# As ISO/IEC 17025 asks: what was not established by the test is marked.
tested-stated-note = Data kuhusu jiko, mzigo, mahali, maabara na mteja ni kama mpimaji alivyozitaja na hazikukaguliwa; makosa yake, na ya utovu wa uhakika uliotajwa, huingia katika matokeo. Matokeo ni ya jiko kama lilivyopokelewa.
tested-tester = lilijaribiwa na
tested-client = mteja
tested-issued = ripoti ilitolewa

## What was tested: instruments

tested-water-temperature = halijoto ya maji
tested-ambient-temperature = halijoto ya mazingira
tested-wind-speed = kasi ya upepo
tested-water-mass = uzito wa maji
tested-irradiance-estimated = mnururisho, umekadiriwa
tested-irradiance-normal = mnururisho, pembemraba na miale
tested-irradiance-horizontal = mnururisho, bapa la mlalo
tested-irradiance-plane-assumed = mnururisho, bapa halikutajwa, limechukuliwa kuwa pembemraba na miale
instrument-not-measured = haikupimwa
# Beside an uncertainty that may be stated or not.
instrument-not-described = bila kuelezwa
# { $description }: the tester's own words; { $id }: a mark or number.
# As in English
instrument-with-id = { $description } ({ $id })
# { $way }: one of the messages that begin with estimated-.
# As in English
instrument-estimated = { $instrument }, { $way }
# { $uncertainty } as in the other rows.
# As in English
instrument-estimated-uncertainty = { $uncertainty }; { $budget }
instrument-uncertainty-of-model = ule wa modeli; { $budget }
# { $budget }: where it stands.
budget-in-section = sehemu ya { $section }
budget-in-own-report = bajeti iko katika ripoti yake yenyewe
instrument-by-class = kwa daraja lake, { $basis }
instrument-by-eye = kwa macho, kipimo cha Beaufort (WMO-No. 8)
instrument-by-eye-uncertainty = masafa ya namba moja, kwa mfano { $speeds }
uncertainty-percent = { $percent } % ya kipimo
# As in English
# As in English
# As in English
uncertainty-seconds = { $seconds } s
tested-instruments-note = Utovu sanifu wa uhakika (k = 1), kama mpimaji alivyoutaja; “kwa daraja lake”: vikomo vya daraja; sehemu ya { $section } inasema kinachokisiwa pale ambapo hakuna kati ya hivi kilichotajwa. Kiwango kinataka kihisi cha maji kiwe katikati, 10 mm juu ya kitako cha chombo, upepo upimwe kando ya jiko kwa kimo chake, na mzigo ugawanywe sawa katika vyombo; hakuna kati ya haya lililokaguliwa.

## Regression and uncertainty: the budget of uncertainty
#
# Cells of a table of six columns: short.

budget-combined = uliojumuishwa
budget-root = kipeuo cha pili cha jumla ya miraba
# The rating with its expanded uncertainty.
# As in English
rating-with-uncertainty = { $power } W ± { $half_width } W (95 %)
rating-of-one-day = { $power } W ± { $half_width } W (si 95 %)
budget-scatter = mtawanyiko kuzunguka mstari
budget-scatter-text = { $deviation } W kwa kipindi, { $intervals ->
        [one] kipindi { $intervals }
       *[other] vipindi { $intervals }
    }
budget-reading = usomaji wa halijoto ya maji
budget-reading-text = { $deviation } W kwa kipindi, { $intervals ->
        [one] kipindi { $intervals }
       *[other] vipindi { $intervals }
    }; zaidi ya mtawanyiko ulioonekana
budget-days = vipindi na siku
budget-days-text = { $days ->
        [one] siku { $days }, ikiachwa nje
       *[other] kila moja ya siku { $days } ikiachwa nje kwa zamu
    }
budget-per-percent = W kwa %
budget-per-kelvin = W kwa K
# As in English
budget-percent = { $share } %
# Several small lines in one; { $share }: a number.
budget-tiny = vingine, kila kimoja chini ya { $share } %
budget-offset-of = { $known } (sehemu ya kosa thabiti)
budget-scale = { $percent } % ya umbali kutoka { $about } (sehemu ya skeli)
# { $uncertainty }: "0.5 K" or "3 % of the reading".
budget-stated = { $uncertainty }, umetajwa
# { $class }: one of the messages that begin with class-; { $basis }: one that begins with basis-.
# As in English
budget-class = { $class }: { $basis }
budget-assumed = imekisiwa kuwa { $class }: { $basis }
# What is in error, in the same table, and in the sentences below.
error-irradiance = mnururisho
error-clear-sky = mnururisho, umekadiriwa
# From the horizontal plane to the plane normal to the beam.
error-conversion = mnururisho, umegeuzwa kuelekea jua
# A weather station a few kilometres away.
error-distance = mnururisho, kwenye kituo
error-water-temperature = halijoto ya maji, kosa thabiti
error-water-scale = halijoto ya maji, kosa la skeli
error-ambient-temperature = halijoto ya mazingira, kosa thabiti
error-ambient-scale = halijoto ya mazingira, kosa la skeli
error-water-mass = uzito wa maji
error-specific-heat = joto mahususi la maji
error-clock-rate = muda
# What their uncertainty follows from, where it is not the tester's to state.
known-clear-sky = { $percent } %: modeli ya anga safi 5 %, utusitusi ndani ya ± 2 iliyobaki
known-conversion = ugeuzaji { $percent } %, kutokana na miale ndani ya moja ya tano
known-distance = { $percent } % kwa kituo cha karibu
known-specific-heat = 4186 J/(kg K) ndani ya ± { $percent } %
known-clock-rate = mwendo wa saa ndani ya ± { $percent } %
# Where it is from, in a list with ";" between: titles and names stay as they are.
source-common-practice = mazoea ya kawaida
source-wmo-8 = WMO-No. 8, jumla za kila saa, kwa madaraja ya ISO 9060:1990 (kiwango cha pili, daraja la kwanza, la pili) ambayo A, B, C za 2018 huyafuata
source-iec-60584 = IEC 60584-1:2013, ustahimilivu hadi 100 °C
source-iec-60751 = IEC 60751, ustahimilivu kwa 100 °C
source-clear-sky = Ineichen na Perez 2002; Reno, Hansen na Stein 2012 (SAND2012-2389); utusitusi kwa mazoea ya kawaida
source-conversion = Erbs, Klein na Duffie 1982; Gueymard na Ruiz-Arias 2016
source-specific-heat = IAPWS-IF97, 10 °C hadi 95 °C

## Regression and uncertainty: what the budget comes to

# { $rating }: rating-with-uncertainty.
# As in English
budget-result = Ps(50) = { $rating }
budget-result-not-valid = Si halali (ukurasa wa kwanza): bajeti iliyo hapa chini ni ya vipimo pekee, ambavyo vinapingana.
budget-rule = Masafa: kipeuo cha pili cha jumla ya (k·u)². Pale ambapo uhakiki wa Monte Carlo (JCGM 101:2008) hutofautiana kwa zaidi ya ustahimilivu wake, kila ncha ni ile iliyo mbali zaidi, na ± ni upande ulio mrefu zaidi. JCGM 100:2008, G.4, huchukua k moja kwa vyanzo vyote; kwa siku chache hiyo ilikuwa nyembamba mno katika maigizo ya kompyuta.
budget-note-columns = k: Student t kwa mtawanyiko na siku, 1.96 kwa vifaa. Mgawo: (k·u)² ya safumlalo gawanya kwa jumla ya safumlalo zote; huwa chini ya sifuri pale kosa moja linapofuta sehemu ya kosa jingine. Aina A: kwa takwimu za vipindi; B: kwa njia nyingine.
budget-note-common = Makosa ya vifaa ni ya pamoja kwa vipindi vyote. Yale ya mnururisho, uzito, joto mahususi na muda hukuza au kupunguza mstari mzima kwa uwiano na hayaonekani kamwe katika mtawanyiko wake; kosa thabiti la halijoto hujifuta katika upandaji na husogeza Td tu, kosa la skeli hufanya yote mawili.
budget-note-thermometer = Utovu wa uhakika u wa kipimajoto huchukuliwa kuwa kweli kwa { $cold } na kwa { $hot }, bila moja kutegemea jingine (mazoea ya kawaida): kosa thabiti la u/√2, na kosa la skeli kuzunguka { $about } ambalo ni u/√2 kwenye kila ncha. Maji na hewa vikisomwa kwa kifaa kimoja hushiriki makosa yote mawili.
# { $sources }: a list of the messages that begin with source-, with ";" between them.
budget-note-sources = Ambayo mpimaji hakuyataja yametoka: { $sources }. Vikomo bila ujuzi zaidi huchukuliwa kuwa na mgawanyo wa mstatili, u = kikomo/√3 (JCGM 100:2008, 4.3.7).
# { $quantities }: a list of messages that begin with error-.
budget-note-assumed = Kwa { $quantities } faili ya kampeni haitaji utovu wa uhakika wala daraja, kwa hiyo daraja la tahadhari kubwa zaidi limekisiwa. Kutaja kilichotumika kwa uwezekano mkubwa kutapunguza utovu wa uhakika.
budget-note-resolution = Kati ya mtawanyiko wa { $scatter } W wa kipindi, upambanuzi wa kipimajoto huchangia { $step } W na wakati wa kusoma { $moment } W, kwa jumla ya miraba; yote mawili ni sehemu ya mtawanyiko huo.
budget-note-resolution-most = Kati ya mtawanyiko wa { $scatter } W wa kipindi, upambanuzi wa kipimajoto huchangia { $step } W na wakati wa kusoma { $moment } W, kwa jumla ya miraba; yote mawili ni sehemu ya mtawanyiko huo. Vipindi jirani hushiriki kipimo kimoja, kwa hiyo sehemu kubwa yake hujifuta ndani ya duru; kinachobaki ndicho sehemu kubwa ya kile ambacho mtawanyiko na siku huipa tathmini, na kipimajo chenye hatua ndogo zaidi kingekipunguza.
budget-note-resolution-beyond = Upambanuzi wa kipimajoto pekee ungeleta mtawanyiko wa { $step } W kwa kipindi, na wakati wa kusoma { $moment } W: kwa pamoja zaidi ya { $scatter } W zilizoonekana. Kwa hiyo kipimajoto kilisomwa kwa hatua ndogo kuliko zilizotajwa au kukisiwa, au makosa ya ukadirishaji wake yalifutana kwa bahati. Kutaja hatua ambayo kilisomwa (resolution_k) kunaweza kupunguza utovu wa uhakika.

## Regression and uncertainty: check by Monte Carlo
#
# Two sentences, one after the other: what was drawn, and what follows from it.

drawn-none = Hakuna uhakiki wa Monte Carlo: mnururisho hauna uhakika kiasi kwamba baadhi ya thamani zake zilizochotwa kwa nasibu huwa sifuri au chini yake. Hapo masafa ni karibu na kubahatisha tu.
drawn-holds = Monte Carlo, makosa yaleyale yaliyochotwa kwa nasibu mara { $trials } kupitia vipimo, nguvu, regresheni na mstari: 95 % yake kutoka { $lower } hadi { $upper } W, ndani ya ustahimilivu wa { $tolerance } W. Masafa ni yale ya bajeti.
drawn-apart = Monte Carlo, makosa yaleyale yaliyochotwa kwa nasibu mara { $trials } kupitia vipimo, nguvu, regresheni na mstari: 95 % yake kutoka { $lower } hadi { $upper } W. Hizo hutofautiana kwa hadi { $apart } W na masafa ya bajeti ya { $from } hadi { $to } W, zaidi ya ustahimilivu wa { $tolerance } W.
# Why: one of these five follows drawn-apart.
drawn-because-divided = Sababu kuu: nguvu hugawanywa kwa mnururisho ambao utovu sanifu wake wa uhakika ni { $percent } %, kwa hiyo kosa la upande mmoja husogeza tathmini zaidi ya kosa lilelile la upande mwingine.
drawn-because-curved = Sababu kuu: makosa yasiyo ya mnururisho hayatendi kwa uwiano mnyoofu.
drawn-because-limits = Sababu kuu: makosa yanayojulikana kwa vikomo vyake pekee hayana mikia, ambayo bajeti huyachukulia kuwa nayo.
drawn-because-few = Sababu kuu: kwa { $freedom ->
    [one] digrii { $freedom } ya uhuru
   *[other] digrii { $freedom } za uhuru
}, Student t na mgawanyo wa kawaida (normal) haviunganiki sawasawa kama kipeuo cha jumla ya miraba.
drawn-because-unsettled = Sababu kuu: uchotaji wenyewe; kwa { $freedom ->
    [one] digrii { $freedom } ya uhuru
   *[other] digrii { $freedom } za uhuru
} ncha zake hutulia polepole.
drawn-interval = Kwa hiyo masafa ni { $from } hadi { $to } W.
drawn-settled-to = Ncha za masafa ya Monte Carlo zinajulikana kwa ± { $within } W.

## Regression and uncertainty: what more data would bring

outlook-at-best = Majaribio zaidi kwa vifaa hivi hayawezi kupunguza ± chini ya { $least } W.
outlook-reached = Lengo la ± { $target } W limefikiwa.
# { $more }: outlook-intervals or outlook-intervals-and-days.
outlook-more = Lengo la ± { $target } W linahitaji { $more }, ikichukuliwa kwamba mtawanyiko ni ule ulioonekana hadi sasa.
outlook-more-one-day = Lengo la ± { $target } W linahitaji { $more }, ikichukuliwa kwamba mtawanyiko ni ule ulioonekana hadi sasa na kwamba siku hazitofautiani.
outlook-intervals = { $intervals ->
        [one] kipindi { $intervals } zaidi kinachotumika
       *[other] vipindi { $intervals } zaidi vinavyotumika
    }
outlook-intervals-and-days = { $intervals ->
        [one] kipindi { $intervals } zaidi kinachotumika
       *[other] vipindi { $intervals } zaidi vinavyotumika
    } katika { $days ->
        [one] siku { $days } zaidi
       *[other] siku { $days } zaidi
    }
# { $heaviest }: one of the sentences that follow.
outlook-out-of-reach = Lengo la ± { $target } W haliwezi kufikiwa kwa vipindi zaidi: vifaa pekee huacha ± { $least } W. { $heaviest }
heaviest-irradiance = Mnururisho ndio wenye uzito mkubwa zaidi.
heaviest-clear-sky = Mnururisho, uliokadiriwa, ndio wenye uzito mkubwa zaidi.
heaviest-conversion = Mnururisho, uliogeuzwa kuelekea jua, ndio wenye uzito mkubwa zaidi.
heaviest-distance = Mnururisho, wa kwenye kituo, ndio wenye uzito mkubwa zaidi.
heaviest-water-temperature = Halijoto ya maji ndiyo yenye uzito mkubwa zaidi.
heaviest-water-scale = Skeli ya kipimajoto cha maji ndiyo yenye uzito mkubwa zaidi.
heaviest-ambient-temperature = Halijoto ya mazingira ndiyo yenye uzito mkubwa zaidi.
heaviest-ambient-scale = Skeli ya kipimajoto cha mazingira ndiyo yenye uzito mkubwa zaidi.
heaviest-water-mass = Uzito wa maji ndio wenye athari kubwa zaidi.
heaviest-specific-heat = Joto mahususi la maji ndilo lenye uzito mkubwa zaidi.
heaviest-clock-rate = Muda ndio wenye uzito mkubwa zaidi.
outlook-too-far = Lengo la ± { $target } W lingehitaji vipindi vingi kuliko mtu yeyote anavyopima, ikichukuliwa kwamba mtawanyiko ni ule ulioonekana hadi sasa.
outlook-too-far-one-day = Lengo la ± { $target } W lingehitaji vipindi vingi kuliko mtu yeyote anavyopima, ikichukuliwa kwamba mtawanyiko ni ule ulioonekana hadi sasa na kwamba siku hazitofautiani.

## Page one, and regression and uncertainty: what limits the number most

# { $percent }: of the square of the ±.
limits-most-few-days = Sehemu kubwa zaidi ya ± inatokana na kuwa na { $days ->
    [one] siku { $days } tu
   *[other] siku { $days } tu
} ({ $percent } % ya mraba wake).
limits-most-days = Sehemu kubwa zaidi ya ± ni mtawanyiko wa siku kwa siku ({ $percent } % ya mraba wake).
limits-most-within-days = Sehemu kubwa zaidi ya ± ni mtawanyiko ndani ya siku na kati yake ({ $percent } % ya mraba wake).
limits-resolution = Sehemu kubwa ya mtawanyiko kati ya vipindi hutokana na upambanuzi wa kipimajoto cha maji.
limits-most-scatter = Sehemu kubwa zaidi ya ± ni mtawanyiko wa vipindi ({ $percent } % ya mraba wake).
limits-most-resolution = Sehemu kubwa zaidi ya ± ni mtawanyiko ({ $percent } % ya mraba wake), na sehemu kubwa ya huo hutokana na upambanuzi wa kipimajoto cha maji.
limits-most-irradiance = Sehemu kubwa zaidi ya ± ni utovu wa uhakika wa mnururisho ({ $percent } % ya mraba wake).
limits-most-estimated = Sehemu kubwa zaidi ya ± ni makadirio ya mnururisho ({ $percent } % ya mraba wake).
limits-most-water = Sehemu kubwa zaidi ya ± ni utovu wa uhakika wa kipimajoto cha maji ({ $percent } % ya mraba wake).
limits-most-ambient = Sehemu kubwa zaidi ya ± ni utovu wa uhakika wa kipimajoto cha mazingira ({ $percent } % ya mraba wake).
limits-most-mass = Sehemu kubwa zaidi ya ± ni utovu wa uhakika wa uzito wa maji ({ $percent } % ya mraba wake).
limits-most-other = Sehemu kubwa zaidi ya ± ni joto mahususi la maji na saa ({ $percent } % ya mraba wake).

## Regression and uncertainty: days, neighbours and single intervals

days-one = Vipindi vyote vilivyotumika ni vya siku moja: haijulikani siku hutofautiana kiasi gani, na hilo halimo katika utovu wa uhakika. Huenda kabisa siku nyingine ikatoa thamani nje ya masafa yaliyotajwa.
days-too-few-intervals = Vipindi ni vichache mno kutenganisha siku na mtawanyiko; kiasi ambacho siku hutofautiana hakimo katika utovu wa uhakika.
days-no-scatter = Vipindi viko kwenye mistari ya siku zake bila mtawanyiko wowote, kwa hiyo siku haziwezi kujaribiwa.
# Of Fisher's F test: degrees of freedom, the statistic, the probability.
# As in English
days-test = F({ $between }, { $within }) = { $statistic }, { $p }
# { $numbers }: days-numbers. One of days-left-out and days-left-out-two follows
# after the first three.
days-differ = Siku hutofautiana zaidi ya mtawanyiko ulio ndani yake unavyoeleza ({ $numbers }).
days-not-shown = Siku hazitofautiani zaidi ya mtawanyiko ulio ndani yake unavyoeleza ({ $numbers }).
days-count = Siku { $days }, si vipindi { $intervals }, ndizo huhesabiwa kuwa vipimo huru: kila siku huachwa nje kwa zamu, jambo linalojumuisha tofauti za kimo na za mteremko na huacha { $freedom ->
    [one] digrii { $freedom } ya uhuru
   *[other] digrii { $freedom } za uhuru
}.
days-count-two = Siku { $days }, si vipindi { $intervals }, ndizo huhesabiwa kuwa vipimo huru: kila siku huachwa nje kwa zamu, kwa { $freedom ->
    [one] digrii { $freedom } ya uhuru
   *[other] digrii { $freedom } za uhuru
}. Siku mbili husema machache kuhusu jinsi siku zinavyotofautiana, kwa hiyo masafa ni mapana.
days-agree = Kuacha nje kila moja ya siku { $days } kwa zamu hutoa masafa membamba kuliko mtawanyiko wa vipindi, kwa hiyo mtawanyiko huo ndio unaotumika.
days-cannot-be-left-out = Hakuna siku inayoweza kuachwa nje, kwa kuwa zile nyingine hazitoi mstari: utovu wa uhakika unategemea vipindi, na tofauti za siku kwa siku hazimo ndani yake.
# Durbin–Watson; { $p }: "p = 0.005".
neighbours-drift = Durbin–Watson ndani ya duru d = { $statistic } (2: huru), { $p } ya pande mbili: vipindi jirani hukosea kwa upande uleule (autocorrelation chanya), kama pale uelekeo wa jiko au anga unapobadilika polepole.
neighbours-share = Durbin–Watson ndani ya duru d = { $statistic } (2: huru), { $p } ya pande mbili: vipindi jirani hushiriki kipimo kimoja cha maji, kwa hiyo makosa yake hupishana juu na chini.
neighbours-by-turns = Durbin–Watson ndani ya duru d = { $statistic } (2: huru), { $p } ya pande mbili: makosa ya vipindi jirani hupishana juu na chini, zaidi ya vile kipimo cha maji vinachoshiriki kinavyoeleza, kama jiko linapoelekezwa upya kila baada ya vipindi viwili.
neighbours-not-shown = Durbin–Watson ndani ya duru d = { $statistic } (2: huru), { $p } ya pande mbili: hakuna autocorrelation iliyoonyeshwa.
influential = Vipindi vyenye athari kubwa (umbali wa Cook > 4/n), hakuna kilichoondolewa: { $intervals }.
influential-more = Vipindi vyenye athari kubwa (umbali wa Cook > 4/n), hakuna kilichoondolewa: { $intervals }; na vingine { $more }.
influential-one = { $date } { $time } ({ $distance }; bila hicho { $power } W)

## Provenance

# { $limit }: a key of the campaign file, with its value; { $what }: a message that begins
# with limit-.
deviation-limit = Kikomo binafsi: { $what } { $limit }.
# guard = true imeandikwa katika faili ya kampeni na hubaki ilivyo.
deviation-guard = Kanuni binafsi ya uamuzi: utovu wa uhakika huhesabiwa dhidi ya kila kikomo, jambo ambalo kiwango hakilitaki.
# { $from }, { $to }: times. { $reason }: the tester's own words.
deviation-excluded = { $run }: { $from } hadi { $to } iliondolewa na mpimaji: { $reason }.
deviation-excluded-no-reason = { $run }: { $from } hadi { $to } iliondolewa na mpimaji: hakuna sababu iliyotolewa.
deviation-findings = Tazama pia kasoro au maelezo yaliyo mwanzoni mwa ripoti hii.
deviation-interval = Urefu wa kipindi: { $shortest } hadi { $longest } s hukubaliwa, na nguvu huhesabiwa kwa muda uliopita kweli; kiwango kinataka { $practice } s.
# Labels stand at the left; there is room for 20 letters.
made-decision-text = kila thamani iliyoonekana hulinganishwa na kikomo chake, bila nafasi kwa utovu wake wa uhakika; inayolingana na kikomo hukitimiza: ukubali rahisi, JCGM 106:2012
made-decision-guarded = kila thamani iliyoonekana hulinganishwa na kikomo chake pamoja na utovu wake uliopanuliwa wa uhakika (k = { $factor }), na hukitimiza pale masafa hayo yote yako ndani: mnururisho ± { $irradiance } %, maji ± { $water }, hewa ± { $ambient }, saa ya kipimo ± { $clock } s, uzito wa maji ± { $mass } %, { $wind }; eneo la kupokea mwanga, hesabu na R² bila utovu huo: ukubali wenye tahadhari, JCGM 106:2012, 8.3 na ILAC-G8
made-decision-wind = upepo ± { $wind }
made-decision-no-wind = upepo bila utovu huo, kwa kuwa haukutajwa
# How it is decided whether a limit is met. Titles of standards stay as they are.
made-decision = kanuni ya uamuzi
# Labels stand at the left; there is room for 20 letters.
made-with = programu
made-issued = imetolewa
made-practice = kiwango
made-solar-time = wakati wa jua
made-solar-time-text = NREL/TP-560-34302, kutokana na saa na longitudo
made-boiling = kiwango cha kuchemka
made-boiling-text = angahewa ya ISO 2533 pale ambapo mgandamizo wa hewa haukupimwa, mvuke uliojaa wa IAPWS-IF97
made-irradiance = mnururisho
# { $way }: one of the messages that begin with estimated-.
made-irradiance-text = umekadiriwa { $way }; bapa lililo pembemraba na miale kwa mujibu wa Liu na Jordan 1963
# Linke turbidity: how much haze a clear sky has.
made-irradiance-stated = umekadiriwa { $way }, utusitusi wa Linke { $turbidity } kama ulivyotajwa; bapa lililo pembemraba na miale kwa mujibu wa Liu na Jordan 1963
made-irradiance-usual = umekadiriwa { $way }, utusitusi wa Linke { $turbidity } (mazoea ya kawaida); bapa lililo pembemraba na miale kwa mujibu wa Liu na Jordan 1963
# { $works }: messages that begin with memory-, with ";" between them.
unchecked-memory = Zimenukuliwa kwa kumbukumbu ya kichwani, bila maandishi mkononi: { $works }. Hesabu zimejaribiwa kwa mifano iliyochapishwa na kwa ukokotoaji huru; thamani hizi hazikujaribiwa. Kagua yoyote ambayo uamuzi unaitegemea.
unchecked-common = “Mazoea ya kawaida” maana yake ni kwamba hakuna chanzo kilichochapishwa kinachojulikana.
# Titles and names stay as they are.
memory-s580 = ASAE S580.1 (vikomo vyake, kwa maneno mengine, na mahali inapotaka vihisi viwe)
memory-decision = JCGM 106:2012 (kanuni ya uamuzi)
memory-decision-guarded = JCGM 106:2012 na ILAC-G8 (kanuni ya uamuzi)
memory-iec-60751 = IEC 60751 (ustahimilivu wa vipimajoto vya ukinzani)
memory-clear-sky = Reno, Hansen na Stein 2012 (zile 5 % za modeli ya anga safi)
memory-conversion = Gueymard na Ruiz-Arias 2016 (mtawanyiko wa miale ya moja kwa moja)
memory-balance = Funk na Larson 1998 (mizania ya joto; muhtasari wake ulionekana); Lahkar, Bhamu na Samdarshi 2012 (uwiano wa mwanga na joto)
memory-dry = Mullick, Kandpal na Saxena 1987 (chombo kikavu)
memory-box = Mullick, Kandpal na Saxena 1987 na IS 13429 (namba za ubora)
memory-dish = Mullick, Kandpal na Kumar 1991 (namba za dishi)
memory-efficiency = Kumar, Vishwanath na Gupta 2012 (kilele cha eksergia; muhtasari wake ulionekana)
memory-food = Chen 1985 na ASHRAE Handbook, Refrigeration (joto mahususi la vyakula)
memory-groups = Piepho 2004 (makundi ya herufi)
memory-cautions = ISO 13732-1:2006 (kuungua); Ciochetti na Metcalf 1984 (upasteurishaji)
report-end = Mwisho wa ripoti { $number }
# As ISO/IEC 17025 asks: an interpretation is marked as one.
# { $minutes }: "20".
balance-readings-far-apart = vipimo vingi vimeachana kwa dakika { $minutes }, na hakuna kipindi cha kiwango kinachotosha kati yao: pato na upotevu vinategemea hatua kutoka kipimo kimoja hadi kingine, na ni elekezi
balance-readings-far-apart-remedy = pima maji kila dakika 9 hadi 11
balance-one-day = data zote ni za siku moja, au hakuna siku inayoweza kuachwa nje, kwa hiyo masafa ya pato na ya upotevu si ya 95 %
balance-one-day-remedy = jaribu katika siku nyingine
# { $range }: "880 to 930".
balance-irradiance-hardly-varied = mnururisho ulibadilika kidogo tu ({ $range } W/m²): pato na upotevu hutenganishwa kwa halijoto ya maji pekee, na thamani kwa mnururisho mwingine hutegemea modeli
balance-irradiance-hardly-varied-remedy = jaribu katika jua hafifu zaidi na katika jua kali zaidi
# { $range }: "-0.10 to 0.90".
balance-loss-not-shown = upotevu ni { $loss } W/K na huenda ni sifuri ({ $range } W/K)
balance-loss-not-shown-remedy = jaribu kwa masafa mapana zaidi ya halijoto ya maji, na kwa siku zaidi
cooking-opinion = Nyakati, kiasi na miezi katika sehemu hii, na muda wowote wa kupasha ulio mwanzoni mwa ripoti hii, ni tafsiri: vinatokana na jaribio na makisio yaliyo hapa chini, na havikupimwa.

## What it means for cooking

cooking-no-line = Hakuna mstari uliolinganishwa, kwa hiyo hakuna muda wa kupasha unaoweza kutajwa.
cooking-not-valid = Vimezuiwa: namba hizi zinapingana na fizikia, kwa hiyo hakuna linaloweza kusemwa kuhusu muda wa kupasha, chakula wala miezi.
# A load of water, in the first column of a table.
cooking-load-tested = { $load }, kama ilivyojaribiwa
# Cells of a table of heating times: whether the water gets there.
cooking-no = hapana
cooking-no-ends = hapana; upashaji huishia karibu na { $temperature }
cooking-probably-not = pengine hapana
cooking-probably-not-ends = pengine hapana; upashaji huishia karibu na { $temperature }
cooking-time-range = { $shortest } hadi { $longest }
cooking-time-open = { $shortest } au zaidi, pengine kamwe
# As in English
cooking-boil = { $time } ({ $range })
cooking-foods-title = Chakula kilichofikishwa kwenye halijoto ya kupikia na kudumishwa hapo ndani ya { $time }
cooking-foods-all = Ndani ya { $time }, yaani dirisha la jua, kila kimoja cha vyakula hivi hufikishwa kwenye halijoto yake ya kupikia na kudumishwa hapo, kwa kiasi cha mzigo uliojaribiwa, { $load }, au zaidi: { $foods }.
# As in English
cooking-food-and-how = { $food } ({ $cooked })
cooking-foods-about = Kuanzia { $start } kwa { $irradiance } W/m², ndani ya dirisha la jua; si zaidi ya mzigo uliojaribiwa, { $load }, kwani zaidi ya hapo jaribio halisemi lolote. Joto mahususi: Chen 1985, kwa viwango vya maji vya ASHRAE Handbook, Refrigeration. Halijoto na muda wa kupika: mazoea ya kawaida; { $safe }: USDA FSIS. Ni makadirio: kagua kwa kipimajoto ndani ya chakula.
cooking-amount-or-more = { $amount } au zaidi
cooking-cooked-at = { $temperature } kwa { $time }
cooking-amount-range = { $lowest } hadi { $highest }
cooking-amount-up-to = kuanzia hakuna hadi { $highest }
cooking-amount-none = hakuna
cooking-amount-probably-none = pengine hakuna
cooking-heat-ends = Kwa { $irradiance } W/m² upashaji huishia kwenye halijoto ya maji ya { $end } ({ $range }), ambapo nguvu hufika sifuri; maji huchemka kwa { $boiling } hapa.
cooking-heat-ends-or-boils = Huenda lisiweze kuchemsha maji, ambayo hapa huchemka kwa { $boiling }: kwa { $irradiance } W/m² upashaji huishia, kwa mujibu wa mstari, karibu na { $end }, halijoto isiyo na uhakika (kuanzia { $lowest } hadi kuchemka).
cooking-ends-perhaps = Maji huchemka kwa { $boiling } hapa, pengine jiko likiwa bado linapasha; kwa masafa ya mstari, upashaji unaweza kuishia kuanzia { $lowest }.
cooking-ends-above = Maji huchemka kwa { $boiling } hapa; jiko bado hupasha maji yanapochemka.
cooking-never-ends = Nguvu haipungui maji yanapopata joto, kwa hiyo hakuna mwisho wa upashaji unaoweza kutajwa; maji huchemka kwa { $boiling } hapa.
cooking-light-of-test = Mnururisho usiobadilika wa { $irradiance } W/m² katika bapa la kihisi, wastani wa vipindi vilivyotumika, ambapo mstari hauhitaji kukuzwa wala kupunguzwa; upepo kama katika vipindi vilivyotumika, jiko likielekezwa upya kama katika jaribio.
cooking-light-asked = Mnururisho usiobadilika wa { $irradiance } W/m² katika bapa la kihisi, kama kampeni inavyotaka, nguvu ikiwa kwa mujibu wa mizania ya joto; upepo kama katika vipindi vilivyotumika, jiko likielekezwa upya kama katika jaribio.
cooking-air-mean = Hewa ya mazingira { $ambient }, wastani wa vipindi vilivyotumika.
cooking-air-asked = Hewa ya mazingira { $ambient }, kama kampeni inavyotaka.
cooking-assumed-load = Kila mzigo hupokea nguvu ya mzigo uliojaribiwa; mizigo midogo sana hupokea pungufu na mikubwa sana hupokea zaidi. Joto ambalo sufuria huhifadhi halihesabiwi. Nje ya halijoto za vipindi vilivyotumika mstari huendelezwa ukiwa umenyooka.
cooking-assumed-edges = Masafa hufuata ukanda wa 95 % wa nguvu, vifaa vikiwamo, na ni ya wastani wa upashaji mwingi, si ya upashaji mmoja.
cooking-assumed-edges-one-day = Masafa hufuata ukanda wa nguvu, vifaa vikiwamo; tofauti za siku kwa siku hazimo na si ukanda wa 95 %, kwa hiyo siku nyingine muda unaweza kuwa nje yake.
cooking-no-months = Hakuna makadirio ya miezi: mnururisho ulipimwa katika bapa la mlalo, na modeli ya anga safi ni ya bapa linalolielekea jua.
cooking-assumed-water = Maji si chakula: chakula hupata joto polepole zaidi, na kifuniko kinachofunuliwa hugharimu dakika nyingi.
food-potatoes = viazi, vipande
food-carrots = karoti, vipande
food-cabbage = kabichi, iliyokatwakatwa
food-rice = mchele na maji mara mbili ya uzito wake
food-eggs = mayai, mazima
food-fish = samaki (chewa wa baharini, cod)

## Clear days through the year

year-note-balance = Makadirio ya tarehe 15 ya kila mwezi chini ya anga safi (Ineichen na Perez 2002), yakihesabu saa zenye { $irradiance } W/m² au zaidi kwenye bapa lililo pembemraba na miale ya jua; mawingu na ukungu hupunguza. Joto: kwa mizania ya joto, ndani ya maji yenye { $difference } zaidi ya hewa; wastani wa miezi ni { $mean } kWh kwa siku. Hewa ya mazingira { $ambient } mwaka mzima, jiko likielekezwa siku nzima.
year-note-water = Maji: mizigo ya { $load }, mmoja baada ya mwingine, kila mmoja kutoka { $start } hadi { $end } na kudumishwa kwa { $time } (Ciochetti na Metcalf 1984); { $kilogram } ni kama { $litre }. Huanza kwa { $start }, kwa hiyo lita hazitokani na joto lililo kando yake. WHO imebaini kwamba virusi hufa polepole tu kati ya 60 °C na 65 °C: unapoweza, chemsha maji hadi yatokote kwa nguvu, na usome tahadhari kuhusu maji ya kunywa. Kwa maji maangavu tu; joto haliondoi kemikali.
# { $fewest }, { $most }: year-hours-of.
year-caption = Pau: makadirio; vijiti: masafa yake kutokana na utovu wa uhakika wa mizania ya joto pekee. Saa: { $fewest } hadi { $most }.
# As in English
year-hours-of = { $hours } ({ $month })
# Names of two panels, about 35 letters each.
year-axis-heat = joto kwa siku, MJ
year-axis-water = maji yaliyopasteurishwa kwa siku, { $unit }
# Read out to those who do not see the figure. { $months }: year-alt-month of each, with ";" between.
year-alt = Chati mbili za pau kwa miezi ya mwaka. { $months }.
year-alt-month = { $month }: { $heat } MJ ({ $heats }) kwa siku, maji { $water } L ({ $waters })
fuel-name = nishati ya kupikia
fuel-heat = joto katika siku isiyo na mawingu
fuel-heat-text = { $heat } MJ, wastani wa miezi iliyo juu
fuel-value = thamani ya chini ya joto
fuel-stove = ufanisi wa jiko la moto
fuel-days = siku kwa mwaka
fuel-result = Kwa makisio haya, yote yakiwa ya mpimaji, joto hilohilo lingehitaji takriban { $best } za { $fuel } kwa mwaka kwa makadirio ({ $range } kutokana na utovu wa uhakika wa tathmini pekee). Huokolewa kwa kiasi tu ambacho moto kweli hauwashwi; hakuna kinachoahidiwa.

## Cautions
#
# These are safety texts. Every sentence of the English has to be there, in its order, none
# weaker, with the same numbers; a test counts both. caution-governs, empty in English, says in
# every other language that the English text governs until a speaker has checked it.

caution-first = Sheria na kanuni za mahali ulipo, na utendaji wa wale walio na leseni ya kufanya kazi kwa mujibu wake, hutangulia lolote lililomo katika ripoti hii. Ripoti hii hutathmini joto; si tamko kuhusu usalama wa jiko wala wa chakula.
caution-governs = Maandishi ya Kiingereza ndiyo yenye mamlaka hadi msemaji wa Kiswahili atakapokuwa ameikagua tafsiri hii.
caution-burns-title = Kuungua kwa moto na kwa maji au mvuke
caution-burns-text = Sufuria, kifuniko chake, kioo cha kufunika jiko, wavu na mvuke huwa na joto la kutosha kuunguza kwa kugusa tu, muda mrefu kabla maji hayajachemka: metali tupu huunguza kwa takriban 65 °C ndani ya sekunde moja na kwa takriban 51 °C ndani ya dakika moja. Tumia glavu kavu, fungua kifuniko kikielekea mbali nawe, na utie jiko kivuli na kuiacha sufuria itulie kabla ya kuibeba. Kioo chenye moto hupasuka maji baridi yanapokigusa, na mrija mwembamba unaweza kurusha nje maji yake yanayochemka.
caution-light-title = Mwanga uliokusanywa na mng'ao
caution-light-text = Usiangalie kamwe ndani ya kitovu cha mwanga (fokasi), wala jua au taswira yake katika kiakisi au paneli: hakuna miwani ya jua inayofanya hilo kuwa salama, na miwani ya giza haitoshi karibu na kitovu cha mwanga. Weka kichwa na mikono nje ya miale. Geuza kiakisi mbali na jua, au kitie kivuli, kabla ya kunyoosha mkono kuichukua sufuria. Kumbuka kwamba kinaweza kuwapofusha kwa mng'ao majirani, madereva na wapita njia.
caution-fire-title = Moto
caution-fire-text = Kiakisi hubaki na kitovu chake cha mwanga wakati jua linasonga, na hivyo kinaweza kuwasha moto kwenye nyasi kavu, kitambaa, mbao au ukuta, vitu ambavyo hakikuvielekea saa moja iliyopita. Kisimamishe kwenye ardhi tupu, mbali na chochote kinachoungua, weka maji au mchanga karibu, na ufunike kiakisi au ukielekeze chini kisipotumika, hata ndani ya nyumba na ghalani. Usimwage kamwe maji kwenye mafuta yanayoungua: yafunike.
caution-unattended-title = Kamwe lisiachwe bila mwangalizi
caution-unattended-text = Mtu anayezijua hatari abaki na jiko, alielekeze, na aiangalie sufuria. Sufuria iliyochemka hadi kukauka hupata joto kupita kiasi, hupasuka au hushika moto; chupa iliyozibwa au kifuniko kilichobanwa kinaweza kupasuka kwa kishindo.
caution-children-title = Watoto na wanyama
caution-children-text = Waweke watoto na wanyama nje ya mstari uliochorwa kuzunguka jiko. Hawakioni kitovu cha mwanga, na huenda kikawa kwenye kimo cha macho yao.
caution-wind-title = Upepo
caution-wind-text = Kiakisi ni tanga. Kiwekee uzito au kifunge chini, na ukiondoe kabla ya upepo mkali: kinapopinduka humwaga maji yanayochemka na hutupa kitovu chake cha mwanga mahali pengine.
caution-materials-title = Jua, joto na vifaa vya kutengenezea
caution-materials-text = Anayejaribu jiko husimama juani kwa saa nyingi: kofia, kivuli, maji na mapumziko. Usitumie rangi, utando, gundi au metali iliyopakwa zinki ambavyo hupata moto karibu na chakula au hutoa mafusho; kwa mara ya kwanza pasha jiko jipya bila chakula, nje ya nyumba.
caution-food-title = Usalama wa chakula
caution-food-text = Bakteria huongezeka haraka kati ya 5 °C na 60 °C. Ni lazima chakula kisikae katika masafa hayo ya halijoto kwa zaidi ya saa mbili kwa jumla, saa moja pale ambapo hewa imezidi 32 °C; jiko linalopasha polepole, au wingu, linaweza kukipitisha muda huo, na kupasha tena hakuondoi kile ambacho kimekwisha kutokea. Pima ndani ya chakula: angalau 74 °C kote. Weka chakula cha moto kwenye 60 °C au zaidi. Ukiwa na shaka, kitupe.
caution-water-title = Maji ya kunywa
caution-water-text = Joto huua vijidudu; kuchemsha hakuondoi kemikali, chumvi wala uchafu. Chemsha maji yote hadi yatokote kwa nguvu na uyaache yaendelee kuchemka kwa dakika moja, kwenye mwinuko wa zaidi ya { $elevation } kwa dakika tatu. Joto lililo chini ya hapo huchukua muda mrefu zaidi na uhakika wake ni mdogo zaidi: 65 °C zikidumishwa kwa dakika sita ndiko kunakoitwa kupasteurisha, na virusi hufa polepole tu kati ya 60 °C na 65 °C. Acha maji yapoe yakiwa yamefunikwa, katika chombo kilekile yalimopashiwa.
caution-sources = Vyanzo. Kuungua: ISO 13732-1:2006. Chakula: USDA FSIS, eneo la hatari 40 hadi 140 °F, kanuni ya saa mbili na halijoto za chini kabisa zilizo salama, ambazo kati yake 74 °C, ile ya nyama ya kuku na ndege wengine na ya viporo, ndiyo ya juu kuliko zote; WHO, Five Keys to Safer Food, 5 °C hadi 60 °C. Maji: US EPA, ushauri wa kuchemsha maji (1 min, 3 min juu ya 5000 ft), kama ulivyonukuliwa katika Emerging Infectious Diseases 31(8), 2025; WHO/FWC/WSH/15.02; Ciochetti na Metcalf 1984, Appl. Environ. Microbiol. 47. Mengine yote: mazoea ya kawaida.

## Notices: what a reader should know about the logs
#
# { $log } and { $weather } are names of files, { $column } is the header of a column.

notice-rows-sorted = { $log }: safumlalo hazikuwa katika mpangilio wa wakati na zimepangwa
notice-repeated-times = { $log }: { $rows ->
        [one] safumlalo { $rows } yenye
       *[other] safumlalo { $rows } zenye
    } wakati wa safumlalo ya awali kuachwa; ya kwanza ndiyo inayohesabiwa
notice-rows-left-out = { $log }: { $rows ->
        [one] safumlalo { $rows } imeachwa (mstari { $lines }: { $reason })
       *[other] safumlalo { $rows } zimeachwa (mistari { $lines }: { $reason })
    }
# { $columns } is a list of notice-unit-assumed.
notice-units-assumed = { $count ->
        [one] hakuna kizio kilichotajwa kwa safuwima, imesomwa kama { $columns }; kitaje katika kichwa, au chini ya [units]
       *[other] hakuna kizio kilichotajwa kwa safuwima, zimesomwa kama { $columns }; kitaje katika kichwa, au chini ya [units]
    }
notice-unit-assumed = "{ $header }" kwa { $unit }
notice-beyond-calibration = { $log }: { $readings ->
        [one] kipimo { $readings }
       *[other] vipimo { $readings }
    } katika safuwima "{ $column }" nje ya nukta za ugezi (calibration) wake, kwa mstari mnyoofu ulio karibu zaidi
notice-quantity-in-both = { $quantity } imo katika { $log } na katika { $weather }; ile ya kando ya jiko ndiyo inayohesabiwa
notice-weather-in-part = { $weather } inahusu sehemu tu ya { $log }; kagua saa za zote mbili (time_zone, weather_clock_offset_s)
# { $parts } and { $readings } are a notice-log-parts and a notice-log-readings.
notice-log-split-bounded = { $log }: imegawanywa katika { $runs ->
        [one] duru { $runs }
       *[other] duru { $runs }
    } kwa tarehe na pengo, kila moja kuanzia mwanzo wa duru hadi mwisho wake; { $parts } na { $readings } vimeachwa
notice-log-split-rising = { $log }: imegawanywa katika { $runs ->
        [one] duru { $runs }
       *[other] duru { $runs }
    } kwa tarehe na pengo, kila moja kuanzia maji baridi kabisa hadi ya moto kabisa, pale yanapopanda kwa { $rise } K au zaidi; { $parts } na { $readings } vimeachwa
notice-log-parts = { $count ->
        [one] sehemu { $count }
       *[other] sehemu { $count }
    }
notice-log-readings = { $count ->
        [one] kipimo { $count }
       *[other] vipimo { $count }
    }
notice-fault-values = { $log }: { $cells ->
        [one] thamani { $cells } ya hitilafu
       *[other] thamani { $cells } za hitilafu
    } katika safuwima "{ $column }" kuchukuliwa kuwa pengo la data; kagua nyaya za kihisi
notice-unbelievable = { $readings ->
        [one] { $log }: kipimo { $readings } katika safuwima "{ $column }" hakiwezi kuwa kweli ({ $values } { $unit }) na kimechukuliwa kuwa hakipo; kagua kihisi
       *[other] { $log }: vipimo { $readings } katika safuwima "{ $column }" haviwezi kuwa kweli ({ $values } { $unit }) na vimechukuliwa kuwa havipo; kagua kihisi
    }
notice-sensors-apart = { $log }: vihisi vya { $quantity } vinatofautiana kwa zaidi ya { $apart } katika { $readings ->
        [one] wakati { $readings }
       *[other] nyakati { $readings }
    }; wastani wake umetumika: hakikisha kwamba hakuna kilichoharibika
notice-sensors-incomplete = { $log }: katika { $readings ->
        [one] wakati { $readings }
       *[other] nyakati { $readings }
    } kimojawapo cha vihisi vya { $quantity } hakina kipimo; wastani wa vingine huruka hapo vikiwa vinatofautiana
notice-long-run = { $log }: vipimo vinachukua siku { $days }, duru ni upashaji mmoja katika siku moja; kagua tarehe, weka start na end, au split = "daily"
notice-above-boiling = { $log }: maji yanafika { $highest }, juu ya kiwango chake cha kuchemka cha { $boiling } hapa; kagua kihisi, mwinuko au mgandamizo wa hewa
notice-odd-noon = { $log }: adhuhuri ya jua ni { $noon } kwa saa hiyo; kagua longitudo (mashariki ni chanya) na ukanda wa saa
notice-column-not-found = { $log }: hakuna safuwima inayoeleweka kuwa { $quantity }, ambayo huhesabiwa kuwa haikupimwa; hazikusomwa: { $ignored }; ikiwa moja yao inayo, itaje chini ya [columns]
# { $files }: a list. --allow-outside is written on the command line and stays as it is.
notice-outside = imesomwa kutoka nje ya folda ya kampeni, kwa ruhusa ya aliyetengeneza hii (--allow-outside): { $files }
notice-trimmed = { $log }: { $readings ->
        [one] kipimo { $readings } cha
       *[other] vipimo { $readings } vya
    } kabla ya mwanzo wa duru au baada ya mwisho wake kuachwa
notice-no-intervals = { $log }: hakuna vipimo viwili vya maji vilivyopishana kwa dakika { $shortest } hadi { $longest }, kwa hiyo hakuna kipindi; rekodi kwa hatua zinazojumlika kuwa dakika { $minutes }
notice-idle-exclusion = { $log }: muda ulioondolewa { $from } hadi { $to } haugusi kipindi chochote; kagua saa zake
notice-stall = { $log }: maji yanapata chini ya nusu ya kile mstari unachosema katika { $spans }, kama chini ya wingu, ingawa anga limetajwa kuwa bila mawingu; angalia maelezo yako, na uelekeo wa jiko
# A span of clock times: from 11:20 to 11:40.
notice-span = { $from } hadi { $to }
# Food safety: as careful as the cautions. { $zone } is danger-zone.
danger-zone = kati ya { $cold } na { $hot }
danger-measured = usalama wa chakula: katika { $run } maji yalikuwa { $zone } kwa { $time }; ni lazima chakula kisikae { $zone } kwa zaidi ya { $longest } kwa jumla (USDA FSIS, WHO), ambapo bakteria huongezeka: pika kiasi kidogo zaidi, anza na maji ya moto, na kwa nyama, samaki, mayai, maziwa na wali tumia jua kali zaidi au jiko jingine
danger-predicted = usalama wa chakula: { $predicted }; ni lazima chakula kisikae { $zone } kwa zaidi ya { $longest } kwa jumla (USDA FSIS, WHO), ambapo bakteria huongezeka: pika kiasi kidogo zaidi, anza na maji ya moto, na kwa nyama, samaki, mayai, maziwa na wali tumia jua kali zaidi au jiko jingine
danger-both = usalama wa chakula: katika { $run } maji yalikuwa { $zone } kwa { $time }, na { $predicted }; ni lazima chakula kisikae { $zone } kwa zaidi ya { $longest } kwa jumla (USDA FSIS, WHO), ambapo bakteria huongezeka: pika kiasi kidogo zaidi, anza na maji ya moto, na kwa nyama, samaki, mayai, maziwa na wali tumia jua kali zaidi au jiko jingine
# What the line says, within the sentences above.
danger-expected-never = mzigo uliojaribiwa hautarajiwi kufika { $hot }
danger-expected = mzigo uliojaribiwa unatarajiwa kuchukua takriban { $time } kufika { $hot } ({ $shortest } hadi { $longest })
danger-expected-open = mzigo uliojaribiwa unatarajiwa kuchukua takriban { $time } kufika { $hot } ({ $shortest } au zaidi, au haufiki hapo)
# What the line says, within the sentences above.
notice-above-film = kwa halijoto ya mazingira mstari hupokea { $share } % ya mwanga wa jua uliopokewa na eneo la jiko, zaidi ya kile utando wa kuakisi hupeleka mbele (86 %; mazoea ya kawaida, bila chanzo kilichochapishwa); kagua eneo la kupokea mwanga, uzito wa maji na mnururisho
# { $taken } is a list of notice-instrument-taken.
notice-instruments-assumed = utovu wa uhakika haukutajwa, kwa hiyo kifaa cha tahadhari kubwa zaidi kimechukuliwa: { $taken }; taja daraja au utovu wa uhakika chini ya [instruments]
notice-instrument-taken = { $quantity } kwa { $class }
notice-date-differs = { $log }: tarehe ya duru imetajwa kuwa { $stated }, vipimo vyake vinaanza tarehe { $found }; vipimo ndivyo vinavyotumika
# Slips. { $zone } is a time zone, { $away } and { $near } are kilometres, { $longitude } and { $latitude } degrees.
notice-odd-noon-sign = { $log }: adhuhuri ya jua ni { $noon } kwa saa hiyo; kwa longitudo ya { $longitude } ingekuwa { $meant }: kagua alama ya longitude_deg (mashariki ni chanya), la sivyo ukanda wa saa
notice-odd-noon-exchanged = { $log }: adhuhuri ya jua ni { $noon } kwa saa hiyo; latitudo na longitudo zikibadilishana ingekuwa { $meant }: kagua kama latitude_deg na longitude_deg zimewekwa mahali pa nyingine, la sivyo ukanda wa saa
notice-far-from-zone-sign = mahali pako km { $away } kutoka mahali pakuu pa ukanda wake wa saa { $zone }; kwa longitudo ya { $longitude } pangekuwa ndani ya km { $near }: kagua alama ya longitude_deg (mashariki ni chanya), la sivyo ukanda wa saa
notice-far-from-zone-exchanged = mahali pako km { $away } kutoka mahali pakuu pa ukanda wake wa saa { $zone }; kwa latitudo { $latitude } na longitudo { $longitude } pangekuwa ndani ya km { $near }: kagua kama latitude_deg na longitude_deg zimewekwa mahali pa nyingine, la sivyo ukanda wa saa
notice-sun-down = { $log }: { $irradiance } W/m² saa { $time } tarehe { $date }, wakati jua liko chini ya upeo wa macho hapa; kagua saa ya kirekodi na ukanda wake (time_zone chini ya [format]), tarehe, na viwianishi vya mahali
notice-sun-low = { $log }: { $irradiance } W/m² saa { $time } tarehe { $date }, wakati jua liko juu kwa { $elevation }° hapa na anga bila mawingu hutoa takriban { $most } W/m² tu; kagua saa ya kirekodi na ukanda wake (time_zone chini ya [format]), viwianishi vya mahali, na kizio cha mnururisho
notice-heats-at-night = { $log }: maji yanapata joto kuanzia { $from } hadi { $to } tarehe { $date }, wakati jua liko chini ya upeo wa macho hapa; kagua saa ya kirekodi na ukanda wake (time_zone chini ya [format]), asubuhi na alasiri, na viwianishi vya mahali
# { $first } to { $last } are the dates of the other runs.
notice-odd-year = { $log }: vipimo vyake ni vya { $found }, vya duru nyingine ni vya { $first } hadi { $last }; ikiwa mwaka ni kosa na iliyokusudiwa ni { $meant }, usahihishe katika rekodi au rekebisha saa ya kirekodi
notice-odd-month = { $log }: vipimo vyake ni vya { $found }, vya duru nyingine ni vya { $first } hadi { $last }, nayo imeorodheshwa kati yao; ikiwa mwezi ni kosa na iliyokusudiwa ni { $meant }, usahihishe katika rekodi au rekebisha saa ya kirekodi
notice-odd-day-and-month = { $log }: vipimo vyake ni vya { $found }, vya duru nyingine ni vya { $first } hadi { $last }; ikiwa siku na mwezi zimebadilishana na iliyokusudiwa ni { $meant }, sema hivyo kwa date_order chini ya [format], au sahihisha tarehe katika rekodi
notice-date-of-name = { $log }: jina lake linasema { $named }, vipimo vyake ni vya { $found }; sahihisha kilicho kosa
notice-clock-not-set = { $log }: vipimo vyake ni vya { $found }, ambapo saa zisizowahi kurekebishwa huanza kuhesabu; andika siku ya jaribio katika rekodi, na rekebisha saa ya kirekodi
notice-in-future = { $log }: vipimo vyake ni vya { $found }, na leo ni { $issued }; { $runs ->
        [one] kagua tarehe katika rekodi, na saa ya kompyuta hii
       *[other] kwa jumla duru { $runs } ziko mbele; kagua tarehe katika rekodi, na saa ya kompyuta hii
    }
notice-odd-run = { $log }: vipindi vyake vinapokea { $share } % ya nguvu ambayo mstari wa duru nyingine { $others } unasema; ikiwa ni ya jiko jingine, au mzigo wake au safuwima zake ni nyingine, ifanyie kampeni yake au zisahihishe; la sivyo, sema katika maelezo yake kilichokuwa tofauti
# { $quantity } is a quantity-…; { $time } is a duration.
notice-stuck-sensor = { $log }: { $quantity } ni { $value } { $unit } katika kila kimoja cha vipimo { $readings } kwa muda wa { $time }, huku vingine vikibadilika; kagua kama kihisi kiliunganishwa na kama hii ndiyo safuwima yake; acha seli tupu pasipopimwa kitu
# { $first }, { $highest }: numbers as they stand in the log, without a unit.
notice-celsius-as-fahrenheit = { $log }: hii inaonekana kama °C: maji katika safuwima "{ $column }" yanaanza kwa { $first }, karibu na hewa ya { $air }, na yanafika { $highest } kwa upeo; kwa °F yangeanza kwa { $first_c }; ikiwa ni °C, andika (°C) baada ya kichwa, au sahihisha kizio cha maji chini ya [units]
notice-celsius-as-fahrenheit-no-air = { $log }: hii inaonekana kama °C: maji katika safuwima "{ $column }" yanaanza kwa { $first } na yanafika { $highest } kwa upeo; kwa °F yangeanza kwa { $first_c }; ikiwa ni °C, andika (°C) baada ya kichwa, au sahihisha kizio cha maji chini ya [units]
notice-water-air-exchanged = { $log }: hewa inapanda kwa { $air } na maji kwa { $water }; ikiwa safuwima zimebadilishana, itaje kila moja kwa water_temperature na ambient_temperature chini ya [columns]
# { $runs } is a list of runs; { $water }, { $area } and loads have their units.
notice-load-pounds = { $runs }: maji { $water } juu ya { $area } ni { $load }; kama namba ingekuwa pauni, ingekuwa { $meant }, na kinachotarajiwa ni { $expected }: ikiwa ndivyo, ibadilishe (1 lb ni 0.4536 kg)
notice-load-square-feet = { $runs }: maji { $water } juu ya { $area } ni { $load }; kama eneo lingekuwa katika futi za mraba, au urefu wake katika futi, ingekuwa { $meant }, na kinachotarajiwa ni { $expected }: ikiwa ndivyo, libadilishe (1 ft² ni 0.0929 m², 1 ft ni 0.3048 m)
notice-load-kilograms = { $runs }: maji { $water } juu ya { $area } ni { $load }; kama kilo zilibadilishwa kana kwamba ni pauni, ingekuwa { $meant }, na kinachotarajiwa ni { $expected }: ikiwa ndivyo, andika kilo kama zilivyopimwa
notice-load-square-metres = { $runs }: maji { $water } juu ya { $area } ni { $load }; kama mita za mraba zilibadilishwa kana kwamba ni futi za mraba, ingekuwa { $meant }, na kinachotarajiwa ni { $expected }: ikiwa ndivyo, andika mita za mraba kama zilivyopimwa

## How the logs were read

quantity-time = wakati
quantity-date = tarehe
quantity-clock = saa
quantity-elapsed = muda uliopita
quantity-water = halijoto ya maji
quantity-vessel = halijoto ya chombo
quantity-ambient = halijoto ya mazingira
quantity-irradiance = mnururisho
quantity-wind = kasi ya upepo
skip-before-header = kabla ya kichwa
skip-units-row = vizio chini ya kichwa
skip-between = kati ya kichwa na vipimo
skip-remark = maelezo
skip-blank = tupu
skip-header-again = kichwa tena
skip-before-header-again = kabla ya kichwa kilichorudiwa
skip-footer = baada ya kipimo cha mwisho
skip-cut-off = umekatika mwishoni mwa faili
skipped-more = { $lines } na mingine { $more }
skipped-lines = { $count ->
        [one] mstari { $lines } umerukwa ({ $reason })
       *[other] mistari { $lines } imerukwa ({ $reason })
    }
# Labels and texts of a list of facts about a log.
log-form = muundo
log-form-text = { $written_in }; kichwa kwenye mstari { $line }; alama ya desimali { $mark }
log-time-text = wakati: { $format }, kama katika "{ $example }"; ukanda { $zone }
log-clock = saa
log-clock-text = { $seconds } s zimeongezwa kwenye nyakati zote
log-notes = maelezo: yanasomwa yale yanayosema kuwa jiko lilielekezwa tena kwenye jua
log-not-read = hazikusomwa
log-readings = { $readings ->
        [one] kipimo { $readings } kuanzia { $from } hadi { $to }
       *[other] vipimo { $readings } kuanzia { $from } hadi { $to }
    }
log-readings-every = { $readings ->
        [one] kipimo { $readings } kuanzia { $from } hadi { $to }, kwa kawaida kimoja kila { $step } s
       *[other] vipimo { $readings } kuanzia { $from } hadi { $to }, kwa kawaida kimoja kila { $step } s
    }
# The same once for several logs: a label, and what stands beside it.
log-step = vipimo
log-step-text = kwa kawaida kimoja kila { $step } s
# How a column was understood: water temperature (synonym), °C (header).
# As in English
log-column = { $quantity } ({ $found_by }), { $unit } ({ $unit_from })
# As in English
log-column-corrected = { $quantity } ({ $found_by }), { $unit } ({ $unit_from }); { $corrections }
# As in English
log-column-one-source = { $quantity }, { $unit } ({ $found_by })
# As in English
log-column-one-source-corrected = { $quantity }, { $unit } ({ $found_by }); { $corrections }
found-campaign-file = faili ya kampeni
found-header = kichwa
found-synonym = kisawe
found-elimination = hakuna kingine katika rekodi ya hali ya hewa
unit-header = kichwa
unit-units-row = safumlalo ya vizio
unit-campaign-file = faili ya kampeni
unit-cells = seli
unit-assumed = hakikutajwa, kimekisiwa
corrected-vessel = chombo { $vessel }, { $load }
corrected-sensitivity = unyeti { $sensitivity } { $unit } kwa kila W/m²
corrected-line-plus = baada ya ugezi: kipimo × { $gain } + { $offset } { $unit }
corrected-line-minus = baada ya ugezi: kipimo × { $gain } − { $offset } { $unit }
corrected-points = baada ya ugezi kwa nukta, { $unit }: { $points }
# How the file is written: what it is, then what separates its cells.
written-sheet = lahajedwali, karatasi "{ $sheet }"
written-text = { $encoding }, seli zimetenganishwa kwa { $delimiter }
written-gzip = gzip, { $encoding }, seli zimetenganishwa kwa { $delimiter }
encoding-marked = { $name } yenye alama ya mpangilio wa baiti
encoding-stated = { $name } (faili ya kampeni)
delimiter-comma = mkato
delimiter-semicolon = nukta mkato
delimiter-tab = kichupo (tab)
delimiter-pipe = mstari wima
delimiter-space = nafasi moja au zaidi mfululizo
delimiter-wide-space = nafasi mbili au zaidi mfululizo
mark-comma = mkato
mark-point = nukta
mark-thousands = { $decimal }, maelfu "{ $mark }" (faili ya kampeni)
# How times are written: date and time, newest first.
time-newest-first = { $form }, mpya zaidi kwanza
time-date-and-time = tarehe na saa
# { $order } is year-month-day or the like, { $from } one of order-from-….
# As in English
time-ordered = { $order } ({ $from })
time-clock-only = saa, ya kwanza tarehe { $date }
time-stopwatch = muda uliopita tangu mwanzo wa duru
time-since-1970 = { $unit } tangu 1970
time-serial = siku za lahajedwali tangu 1899-12-30
time-elapsed = { $unit } zilizopita tangu mwanzo wa duru
zone-epoch = UTC (tangu 1970)
zone-start = ule wa mwanzo wa duru
zone-offsets = tofauti na UTC katika kila safumlalo
# { $zone } is a name such as Europe/Madrid, { $from } where it stands.
# As in English
zone-named = { $zone } ({ $from })
zone-local = wa mahali
from-header = kichwa
from-units-row = safumlalo ya vizio
from-line-before = mstari kabla ya kichwa
from-campaign-file = faili ya kampeni
from-site = mahali pa jaribio
order-only-days = mpangilio pekee ambao kila safumlalo ni siku
# Of dates such as 10.06.2026, and of those such as 10/06/26.
order-points = nukta hutenganisha siku, mwezi na mwaka
order-only-usual = mpangilio pekee wa kawaida ambao kila safumlalo ni siku
order-first-row = safumlalo ya kwanza
order-same-day = siku ileile kwa mpangilio wowote
order-only-following = mpangilio pekee ambao siku hufuata siku
order-run-date = tarehe ya duru
order-year-month-day = mwaka-mwezi-siku
order-day-month-year = siku-mwezi-mwaka
order-month-day-year = mwezi-siku-mwaka

# The figures: names of axes, keys, labels. None of them ends with a full stop.
#
# Room is short. The names of axes stand upright or along the axis, on one line if they fit:
# where a number of letters is given, longer ones are broken in two and set smaller.

## Figures: power against temperature difference

# Along the lower axis, up to 80 letters.
figure-difference = tofauti ya halijoto Td, maji kutoa mazingira, { $unit }
# Upright, up to 45 letters.
figure-power = nguvu sanifu ya kupikia Ps, W
figure-power-estimated = Ps, W, kwa mnururisho uliokadiriwa
# As in English
figure-power-short = Ps, W
figure-power-short-estimated = Ps makadirio, W
# In an empty figure.
figure-no-interval = hakuna kipindi kamili, kwa hiyo hakuna cha kuchora
figure-nothing-to-plot = mnururisho haukupimwa, kwa hiyo hakuna cha kuchora
# Beside the mark on the line, up to 18 letters with the number.
figure-rating = { $power } W kwa { $at }

## Figures: residuals and their spread

# Along the lower axis of half a figure, up to 40 letters.
figure-difference-short = tofauti ya halijoto Td, { $unit }
figure-start = saa ya mahali mwanzoni
# Of a normal distribution: how many standard deviations from the mean one expects a value.
figure-expected = kwantaili ya mgawanyo wa kawaida
# Upright, up to 22 letters: how far a point is above the line.
figure-residual = Ps kutoa mstari, W
figure-band = mstari na ukanda wake, W
# A day in a key.
# As in English
figure-day = { $day } { $month }

## Figures: a run over the day

# Beside a curve.
figure-water = maji
figure-ambient = mazingira
figure-aimed = lilielekezwa
# In the figure of a run, 140 to 480 points wide: as short as can be. { $at }: a temperature with its unit.
figure-boils = huchemka kwa { $at }
# Limits on the water temperature. { $margin }: a number of kelvins.
figure-below-boiling = kuchemka − { $margin }
figure-above-ambient = mazingira + { $margin }
# In a panel of irradiance or wind that no instrument measured.
figure-estimated = umekadiriwa

# The comparison of several campaigns, in the order of its pages.
#
# { $first } and { $second } are campaigns by their titles, as the testers wrote them, such as
# "Box one, lid open"; where two have one title, with the folder's name in brackets behind it.
# Where there are many, campaigns are called by numbers (calls-numbers). The difference is that of
# the second from the first.

## Comparison: every page

comparison-kind = Majiko ya jua yaliyolinganishwa
# In place of a title that would be too long.
# How many campaigns, always several, of how many cookers.
comparison-count = { $cookers ->
        [one] kampeni { $campaigns } za jiko moja
       *[other] kampeni { $campaigns } za majiko { $cookers }
    }
# { $sites }: a list of names of places, or comparison-sites. { $dates }: a date, or
# comparison-dates.
comparison-sites = maeneo { $count }
# In place of a long list of those who tested.
comparison-authors = wapimaji { $count }
comparison-statement = Matokeo yanahusu tu majiko kama yalivyojaribiwa. Nakili ripoti nzima tu.
# At the head of every page.
comparison-mark-mixed = Taratibu au vikomo vimechanganyika
comparison-mark-not-valid = Si halali kwa sehemu
comparison-mark-indicative = Elekezi kwa sehemu
comparison-mark-invented = Data za kubuni, kwa maonyesho
comparison-end = Mwisho wa ripoti { $number }

## The web page that leads to the reports of several campaigns

# { $count }: how many reports it leads to.
index-title = { $count ->
    [one] Ripoti moja ya jaribio la jiko la jua
   *[other] Ripoti { $count } za majaribio ya majiko ya jua
}
index-subtitle = Imeandikwa tarehe { $date }
# { $name }: a campaign.
index-invented = { $name } (data za kubuni)
index-some-invented = Baadhi ya data ni za kubuni, kwa maonyesho
index-statement = Kila tokeo linahusu tu jiko kama lilivyojaribiwa.
index-no-rating = Hakuna kampeni kati ya hizi yenye tathmini.
# "compare" is a command.
index-order = Mpangilio ni wa namba na hausemi jiko lipi ni bora: kampeni zinaweza kutofautiana kwa mahali, hali ya hewa, mzigo na vifaa. Amri “simmerline compare” huonyesha kama tofauti kati ya mbili kati yake ni halisi.
page-index-reports = Ripoti na data
index-web-page = ripoti
index-pdf = ripoti kama PDF
index-results = matokeo kama data
index-intervals = vipindi kama jedwali
# { $names }: campaigns, with ";" between them.
index-failed = { $count ->
    [one] Hakuna ripoti iliyoandikwa ya kampeni moja
   *[other] Hakuna ripoti iliyoandikwa ya kampeni { $count }
}: { $names }. Sababu ilichapishwa kwenye terminali.
index-caution = Nyuso zenye moto na mvuke huunguza, kitovu cha mwanga kinaweza kupofusha na kuwasha moto, na tathmini hizi hazisemi lolote kuhusu usalama wa chakula. Soma tahadhari zilizo katika ripoti kabla hujapika. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.

## Comparison: what campaigns are called

# A campaign's title within a sentence.
# As in English
calls-name = “{ $name }”
# Some campaigns by the numbers that they have in the comparison: "2", or "1–4, 7".
calls-numbers = { $count ->
        [one] Na. { $numbers }
       *[other] Na. { $numbers }
    }

## Comparison: its title
#
# { $name }, { $first }, { $second }: titles of campaigns. { $power }: verdict-power, or
# verdict-power-indicative. "Gives" is of standardised cooking power at 50 K.

# As in English
verdict-power = { $power } ± { $half_width } W
verdict-power-indicative = { $power } (elekezi tu)
verdict-title-only = Tathmini moja tu iliyo halali: { $name }, { $power }
verdict-title-two = { $first } hutoa { $difference } zaidi ya { $second }
verdict-title-two-alike = { $first } na { $second } haziwezi kutofautishwa
verdict-title-two-untold = Haiwezi kusemwa ipi hutoa zaidi, { $first } au { $second }
verdict-title-most = { $name } hutoa zaidi ya zote: { $power }
# Some cannot be held against it; or none can.
verdict-title-most-told = { $name } hutoa zaidi kati ya zinazoweza kulinganishwa: { $power }
verdict-title-alone = { $name } ina tathmini ya juu kabisa, { $power }, lakini haiwezi kulinganishwa na nyingine
verdict-title-leads-one = { $name } inaongoza kwa { $power }, lakini haiwezi kutofautishwa na { $second }
# { $others }: at least two.
verdict-title-leads = { $name } inaongoza kwa { $power }, lakini nyingine { $others } haziwezi kutofautishwa nayo
# { $second } gives more by the heat balances, which decide where irradiance differed.
verdict-title-beaten-by-one = { $name } ina tathmini ya juu kabisa, { $power }, lakini chini ya mnururisho sawa { $second } hutoa zaidi
verdict-title-beaten = { $name } ina tathmini ya juu kabisa, { $power }, lakini chini ya mnururisho sawa nyingine { $others } hutoa zaidi
# Counts of those held against the baseline { $name }.
verdict-title-baseline = Dhidi ya { $name } ({ $power }): zaidi { $more }, pungufu { $less }, zisizotofautishwa { $alike }
verdict-baseline-unrated = { $name }, iliyo msingi, haina tathmini iliyo halali, kwa hiyo hakuna tathmini zinazolinganishwa.
# Beside a large number, which is { $minuend } less { $subtrahend }.
verdict-lead = { $minuend } kutoa { $subtrahend }, Ps(50), pamoja na masafa yake ya 95 %
verdict-lead-one-day = { $minuend } kutoa { $subtrahend }, Ps(50), pamoja na masafa yake; hazikujaribiwa kwa siku kadhaa kila moja, kwa hiyo si masafa ya 95 %
verdict-lead-common = { $minuend } kutoa { $subtrahend }, nguvu kwa 700 W/m² na 50 K kwa mizania za joto, pamoja na masafa yake ya 95 %
verdict-lead-common-one-day = { $minuend } kutoa { $subtrahend }, nguvu kwa 700 W/m² na 50 K kwa mizania za joto, pamoja na masafa yake; hazikujaribiwa kwa siku kadhaa kila moja, kwa hiyo si masafa ya 95 %
# { $pairs }: at least two.
verdict-in-all = Jozi ambazo tofauti imeonyeshwa: { $shown } kati ya { $pairs }.
verdict-in-all-compared = Jozi ambazo tofauti imeonyeshwa: { $shown } kati ya { $compared } zinazoweza kulinganishwa ({ $pairs } kwa jumla).
verdict-untold-pairs = { $pairs ->
        [one] Jozi moja haiwezi
       *[other] Jozi { $pairs } haziwezi
    } kulinganishwa: wastani wa mnururisho ulitofautiana, na si zote mbili zenye mizania ya joto.
verdict-untold-pairs-planes = { $pairs ->
        [one] Jozi moja haiwezi
       *[other] Jozi { $pairs } haziwezi
    } kulinganishwa: mnururisho wa moja uko katika bapa jingine kuliko wa nyingine.

## Comparison: the ranking
#
# Above its plot; then the headers of its columns, which have little room.

ranking-axis = Ps(50), W, pamoja na masafa yake ya 95 %
ranking-axis-one-day = Ps(50), W, pamoja na masafa yake
page-ranking-campaign = kampeni
# Over letters of groups, of which two campaigns that cannot be told apart have one in common.
page-ranking-groups = zisizotofautishwa
# On a terminal: a difference with its interval and what it is of.
# As in English
terminal-lead = { $value } W ({ $interval } W): { $label }
# A header, over ranks.
terminal-rank = Na.
# Over cells such as "0.94 · 45 · 4", in two lines.
ranking-rests-on = R², vipindi, siku
# For each square metre of intercept area, as the campaign files state it.
# As in English
ranking-per-area = W/m²
# { $currency }: as the tester wrote it.
# As in English
ranking-per-currency = W/{ $currency }
ranking-per-cost = W kwa kizio cha gharama
# Headers of a column of differences.
ranking-from-first = Na. 1 kutoa hii, W
ranking-from-baseline = tofauti na msingi, W
# Below the ranking.
# What a pair that is shown to differ holds for; with several pairs for all of them.
pairs-together = { $pairs ->
    [one] 95 %
   *[other] 95 % kwa jozi zote { $pairs } zinazoweza kulinganishwa kwa pamoja, Holm
}
pairs-note-alone = Masafa ni ya jozi yake pekee, “imeonyeshwa” ni kwa jozi zote kwa pamoja: tofauti ambayo masafa yake hayana sifuri inaweza kuwa haikuonyeshwa.
ranking-note-brackets = Pau huunganisha kampeni zisizoweza kutofautishwa ({ pairs-together }); mbili zisizoshiriki pau yoyote hutofautiana.
ranking-note-brackets-dash = Pau huunganisha kampeni zisizoweza kutofautishwa ({ pairs-together }); mbili zisizoshiriki pau yoyote hutofautiana, isipokuwa moja ina kistari.
# The same where letters stand in place of bars: on a web page and a terminal.
ranking-note-letters = Kampeni zenye herufi ya pamoja haziwezi kutofautishwa ({ pairs-together }); mbili zisizoshiriki herufi yoyote hutofautiana.
ranking-note-letters-dash = Kampeni zenye herufi ya pamoja haziwezi kutofautishwa ({ pairs-together }); mbili zisizoshiriki herufi yoyote hutofautiana, isipokuwa moja ina kistari.
ranking-note-all-apart = Zote zinaweza kutofautishwa ({ pairs-together }).
# Where some have a dash in place of letters.
ranking-note-rest-apart = Zote zisizo na kistari zinaweza kutofautishwa ({ pairs-together }).
# Below the ranking, a list says of each rank from which others it cannot be told apart.
ranking-note-alike = Kampeni ambazo kila moja haiwezi kutofautishwa nazo zimeorodheshwa hapa chini ({ pairs-together }).
# The same where numbers stand in the ranking itself.
ranking-note-alike-beside = “{ page-ranking-groups }”: namba za kampeni ambazo kila moja haiwezi kutofautishwa nazo ({ pairs-together }).
# These two follow one of the above.
ranking-note-undecided = Mbili zisizoweza kulinganishwa huhesabiwa kuwa hazitofautishwi.
ranking-note-one-day = Mbili ambazo hazikujaribiwa kwa siku kadhaa kila moja huhesabiwa kuwa hazitofautishwi, hata zikitofautiana kiasi gani.
ranking-note-dash = Kistari: haiwezi kulinganishwa na nyingine yoyote, au na zile tu zenye kistari.
ranking-note-not-held = Kistari mahali pa pau: haiwezi kulinganishwa na nyingine yoyote, au na zile tu zenye kistari.
ranking-note-not-held-letters = Kistari mahali pa herufi: haiwezi kulinganishwa na nyingine yoyote, au na zile tu zenye kistari.
ranking-note-differences = Tofauti pamoja na masafa yake ya 95 %. Herufi nzito: imeonyeshwa ({ pairs-together }). Kijivu: haijaonyeshwa.
ranking-note-differences-one-day = Tofauti pamoja na masafa yake, ya 95 % isipokuwa yenye †. Herufi nzito: imeonyeshwa ({ pairs-together }). Kijivu: haijaonyeshwa.
# On a terminal, which has no bold type.
terminal-note-differences = Tofauti pamoja na masafa yake ya 95 %. Alama ya kuuliza mbele yake: haijaonyeshwa ({ pairs-together }).
terminal-note-differences-one-day = Tofauti pamoja na masafa yake, ya 95 % isipokuwa yenye †. Alama ya kuuliza mbele yake: haijaonyeshwa ({ pairs-together }).
ranking-note-common = *: wastani wa mnururisho ulitofautiana, kwa hiyo tofauti ni ya nguvu kwa 700 W/m² na 50 K kwa mizania za joto.
ranking-note-data = Kila jozi imo katika faili ya data.
page-ranking-continued = inaendelea
# Read out where a campaign has no bar.
page-ranking-alone = tofauti na zote zinazoweza kulinganishwa nayo
# Read out to those who do not see the plot.
ranking-alt = { $power } W, masafa ya 95 % { $range } W
ranking-alt-one-day = { $power } W, masafa bila siku { $range } W
# What the marks of the plot mean.
ranking-key-filled = Iliyojazwa: inakidhi.
ranking-key-open = Wazi: elekezi tu.
ranking-key-struck = Iliyokatwa kwa mstari: haiwezekani kifizikia, haina nafasi.
ranking-key-arrow = Mshale: masafa yanaendelea nje ya mhimili.
ranking-key-one-day = Masafa ni ya 95 %, isipokuwa palipoandikwa “{ status-one-day }”.
# { $names }: campaigns, with ";" between them.
ranking-left-out = Hakuna tathmini: { $names }.
# { $level }: one of those that begin with ratings-; { $reasons }: some of the next, in two or
# three words each.
# As in English
status-for = { $level }: { $reasons }
status-one-day = siku hazimo katika ±
status-too-few-intervals = vipindi vichache mno
status-too-few-days = siku chache mno
status-r-squared-low = R² ndogo
status-line-not-falling = nguvu haipungui maji yanapopata joto
status-no-useful-heat = hakuna joto lenye manufaa kwa 50 K
status-extrapolated = 50 K hazikuonekana
status-load-off = mzigo mwingine
status-wind-not-measured = upepo haukupimwa
status-wind-estimated = upepo umekadiriwa kwa macho
status-flat = kihisi cha mnururisho kililala bapa
status-irradiance-missing = mnururisho haupo katika baadhi ya duru
status-plane-not-stated = bapa la mnururisho halikutajwa
status-impossible-gain = joto zaidi ya mwanga wa jua
status-own-limits-looser = vikomo vilivyolegezwa
status-own-limits-tighter = vikomo vikali zaidi
status-excluded = muda ulioondolewa na mpimaji

## Comparison: what each pair comes to
#
# { $difference }: watts, never negative. { $interval }: comparison-span, a confidence
# interval. "Real" and "shown" are words for what statistics can tell from chance.

# A range of numbers.
comparison-span = { $from } hadi { $to }
# Before what is said of the difference at common conditions, or verdict-untold.
# { $first_sun }, { $second_sun }: mean irradiance.
verdict-suns = Tathmini za { $second } na { $first } hutofautiana kwa { $difference } W ({ $interval } W), lakini { $second } ilijaribiwa chini ya { $second_sun } W/m² na { $first } chini ya { $first_sun } W/m², na tathmini hukuza upotevu wa joto pamoja na jua: tathmini pekee hazionyeshi kama majiko yanatofautiana.
# In place of all that follows up to verdict-untold, where the plane of irradiance differs.
verdict-planes = Tathmini za { $second } na { $first } hutofautiana kwa { $difference } W ({ $interval } W), lakini mnururisho wa moja uko katika bapa jingine kuliko wa nyingine, kwa hiyo haiwezi kusemwa kama majiko yanatofautiana.
# The sentence that follows is of that.
verdict-common = Yanayofuata ni ya nguvu kwa 700 W/m² na 50 K, kwa mizania za joto.
verdict-untold = Bila mizania ya joto ya zote mbili haiwezi kusemwa kama majiko yanatofautiana.
# The sentence that follows is of that.
verdict-shown-more = { $second } hutoa { $difference } W zaidi ya { $first } ({ $interval } W): tofauti halisi.
verdict-shown-less = { $second } hutoa { $difference } W pungufu ya { $first } ({ $interval } W): tofauti halisi.
# { $share }: the difference as a part of the power of the first.
verdict-shown-more-share = { $second } hutoa { $difference } W zaidi ya { $first } ({ $interval } W), { $share } %: tofauti halisi.
verdict-shown-less-share = { $second } hutoa { $difference } W pungufu ya { $first } ({ $interval } W), { $share } %: tofauti halisi.
verdict-one-day-more = { $second } ilitoa { $difference } W zaidi ya { $first } ({ $interval } W) ilipojaribiwa, lakini si kwa siku kadhaa kila moja, kwa hiyo huenda siku pekee zinaieleza: jaribu zote mbili tena katika siku nyingine.
verdict-one-day-less = { $second } ilitoa { $difference } W pungufu ya { $first } ({ $interval } W) ilipojaribiwa, lakini si kwa siku kadhaa kila moja, kwa hiyo huenda siku pekee zinaieleza: jaribu zote mbili tena katika siku nyingine.
# { $second } less { $first } is told from the second's side.
verdict-by-chance-more = { $second } hutoa { $difference } W zaidi ya { $first } ({ $interval } W), lakini kati ya { $pairs ->
        [one] jozi { $pairs }
       *[other] jozi { $pairs }
    } tofauti kubwa hivyo hutokea pia kwa bahati: haijaonyeshwa.
verdict-by-chance-less = { $second } hutoa { $difference } W pungufu ya { $first } ({ $interval } W), lakini kati ya { $pairs ->
        [one] jozi { $pairs }
       *[other] jozi { $pairs }
    } tofauti kubwa hivyo hutokea pia kwa bahati: haijaonyeshwa.
# One of the sentences that begin with needed- may follow.
verdict-not-shown-even = Hakuna tofauti kati ya { $second } na { $first } iliyoweza kuonyeshwa. { $second } kutoa { $first }: chochote kuanzia { $interval } W kinalingana na data.
verdict-not-shown-more = Hakuna tofauti kati ya { $second } na { $first } iliyoweza kuonyeshwa: { $difference } W zaidi, na chochote kuanzia { $interval } W kinalingana na data.
verdict-not-shown-less = Hakuna tofauti kati ya { $second } na { $first } iliyoweza kuonyeshwa: { $difference } W pungufu, na chochote kuanzia { $interval } W kinalingana na data.
# "One" is a difference, in the next three.
needed-other-days = Jaribu zote mbili tena katika siku nyingine.
# Before one of those that begin with needed-; "one" there is a difference of these two.
needed-of = Kati ya “{ $first }” na “{ $second }”:
needed-none = Tofauti ya { $sought } W (sehemu moja ya kumi ya nguvu iliyo kubwa) kwa uwezekano mkubwa ingeonekana.
needed-days = { $days ->
        [one] Siku { $days } zaidi kama zilizojaribiwa, kwa kila moja, ingetosha
       *[other] Siku { $days } zaidi kama zilizojaribiwa, kwa kila moja, zingetosha
    } kwa uwezekano mkubwa kuonyesha tofauti ya { $sought } W (sehemu moja ya kumi ya nguvu iliyo kubwa).
needed-no-number = Siku zaidi pekee zisingeweza kuonyesha tofauti ya { $sought } W (sehemu moja ya kumi ya nguvu iliyo kubwa) ila kwa shida: siku, au vifaa visivyo na id moja, hutofautiana mno.

## Comparison: what a difference comes from
#
# By the heat balances: gain is what is taken in of sunlight, loss what is lost to the air.

cause-untold = Bila mizania ya joto ya zote mbili haiwezi kusemwa tofauti inatoka wapi.
cause-untold-planes = Haiwezi kusemwa tofauti inatoka wapi, kwa kuwa mapato ya mnururisho katika mabapa tofauti hayawezi kulinganishwa.
# The next six are followed by cause-numbers.
cause-no-difference = Kwa kuwa hakuna tofauti iliyoonyeshwa, hakuna sababu yake inayotajwa.
cause-not-shown = Haijaonyeshwa tofauti inatoka wapi.
cause-more-gain = { $second } hupokea mwanga wa jua zaidi ya { $first }, kama baada ya kubadilisha viakisi au kioo.
cause-less-gain = { $second } hupokea mwanga wa jua pungufu ya { $first }, kama baada ya kubadilisha viakisi au kioo.
cause-more-loss = { $second } hupoteza joto zaidi kwa kila kelvini kuliko { $first }, kama kwa kizuia joto duni zaidi, upepo zaidi au bila kifuniko.
cause-less-loss = { $second } hupoteza joto pungufu kwa kila kelvini kuliko { $first }, kama kwa kizuia joto bora zaidi, upepo mdogo zaidi au kwa kifuniko.
# Differences with their signs, and 95 % intervals.
cause-numbers = { $second } kutoa { $first } kwa mizania za joto: pato { $gain } m² ({ $gain_interval } m²), upotevu { $loss } W/K ({ $loss_interval } W/K).
# In a cell of the matrix, where the difference is real: what it comes from.
matrix-gain = pato
matrix-loss = upotevu
matrix-both = pato, upotevu

## Comparison: the matrix of differences

matrix-title = Tofauti: safumlalo kutoa safuwima, W
# Read out in place of a cell. { $verdict }: difference-real or difference-not-shown.
# As in English
matrix-alt = { $value } W, { $interval } W, { $verdict }
matrix-untold = haiwezi kusemwa
matrix-note = Ps(50), pamoja na masafa ya 95 %. Herufi nzito: tofauti imeonyeshwa ({ pairs-together }). Kijivu: haijaonyeshwa.
matrix-note-one-day = Ps(50), pamoja na masafa, ya 95 % isipokuwa yenye †. Herufi nzito: tofauti imeonyeshwa ({ pairs-together }). Kijivu: haijaonyeshwa.
# † stands before it.
matrix-note-of-one-day = Hazikujaribiwa kwa siku kadhaa kila moja: masafa si ya 95 %, na hakuna tofauti iliyoonyeshwa.
# A star stands before it.
matrix-note-common = Wastani wa mnururisho hutofautiana kwa zaidi ya { $percent } %: tofauti ni ya nguvu kwa 700 W/m² na 50 K kwa mizania za joto.
matrix-note-untold = –: haiwezi kusemwa: wastani wa mnururisho ulitofautiana, na si zote mbili zenye mizania ya joto.
matrix-note-untold-planes = –: haiwezi kusemwa: mnururisho wa moja uko katika bapa jingine kuliko wa nyingine.
matrix-note-untold-either = –: haiwezi kusemwa: mnururisho wa moja uko katika bapa jingine kuliko wa nyingine, au wastani wake ulitofautiana na si zote mbili zenye mizania ya joto.
matrix-note-cause = Pato, upotevu: tofauti inatoka wapi, kadiri mizania za joto zinavyoonyesha: mwanga wa jua uliopokewa, joto lililopotea.

## Comparison: lines and heating times

section-lines = Nguvu dhidi ya tofauti ya halijoto
lines-caption = Nguvu sanifu ya kupikia Ps kwa W dhidi ya halijoto ya maji juu ya hewa kwa K. Kwa nyeusi: kampeni iliyotajwa juu ya paneli, vipindi vyake vilivyotumika, mstari wake katika tofauti zilizoonekana pamoja na ukanda wa 95 % wa mtawanyiko, siku na vifaa, na tathmini yake kwa 50 K. Kijivu: nyingine. Makosa ambayo kampeni huyashiriki yamo katika kila ukanda lakini hufutana katika tofauti.
lines-caption-one-day = Nguvu sanifu ya kupikia Ps kwa W dhidi ya halijoto ya maji juu ya hewa kwa K. Kwa nyeusi: kampeni iliyotajwa juu ya paneli, vipindi vyake vilivyotumika, mstari wake katika tofauti zilizoonekana pamoja na ukanda wa mtawanyiko, siku na vifaa (wa 95 %; wa siku moja, bila siku na si wa 95 %), na tathmini yake kwa 50 K. Kijivu: nyingine. Makosa ambayo kampeni huyashiriki yamo katika kila ukanda lakini hufutana katika tofauti.
# Read out to those who do not see the panel.
lines-alt = Mstari Ps = { $intercept } W { $slope } W/K · Td; kwa 50 K { $power } W, masafa ya 95 % { $range } W
lines-alt-one-day = Mstari Ps = { $intercept } W { $slope } W/K · Td; kwa 50 K { $power } W, masafa bila siku { $range } W
# { $shown }: those with most power.
comparison-first-only = { $shown } za kwanza kati ya { $campaigns } zimeonyeshwa; zote zimo katika faili ya data.
section-heating = Muda wa kupasha
heating-title = Maji { $load } kutoka { $start } hadi { $target } kwa { $irradiance } W/m²
heating-note = Kwa mizania ya joto ya kila kampeni kwa { $irradiance } W/m², katika hewa ya { $ambient } kwa zote, pamoja na masafa yake ya 95 %; joto la sufuria yenyewe halihesabiwi. Mshale: masafa huendelea nje ya mhimili, au huenda maji yasifike hapo.
heating-note-one-day = Kwa mizania ya joto ya kila kampeni kwa { $irradiance } W/m², katika hewa ya { $ambient } kwa zote, pamoja na masafa yake (ya 95 %, isipokuwa ya siku moja); joto la sufuria yenyewe halihesabiwi. Mshale: masafa huendelea nje ya mhimili, au huenda maji yasifike hapo.

## Comparison: what a reader must know first

# "The first" is the campaign that was named first.
departure-procedure = utaratibu { $here } ambapo ya kwanza ina { $there }
# { $limit }: a key of the campaign file. { $here }, { $there }: numbers, or departure-none.
departure-limit = { $limit } { $here } ambapo ya kwanza ina { $there }
# The same on paper. { $limit }: one of those that begin with limit-. { $here }, { $there }: with
# their units, or departure-none.
departure-limit-said = { $limit } { $here } badala ya { $there }
departure-least-said = { $limit } angalau { $here }
departure-most-said = { $limit } si zaidi ya { $here }
departure-none-said = hakuna kikomo cha { $limit }
departure-procedure-said = utaratibu { $here } badala ya { $there }
departure-guard-said = vikomo vyenye ukanda wa tahadhari
departure-no-guard-said = vikomo bila ukanda wa tahadhari
departure-none = hakuna
# What a reader must know first: a label, and what is said. { $campaigns }: one or two titles, or
# calls-numbers.
page-caveats = Kabla ya kuyategemea
caveat-not-valid = Si halali
caveat-not-valid-text = { $campaigns }: maji yangepata joto zaidi ya mwanga wa jua unaoangukia jiko. Kagua eneo la kupokea mwanga, mzigo na vizio. Hakuna nafasi, na hakuna tofauti ya tathmini inayotajwa.
caveat-no-rating = Hakuna tathmini
caveat-no-rating-text = { $campaigns }: ni namba nyingine tu zinazoweza kulinganishwa.
caveat-indicative = Elekezi tu
caveat-indicative-text = { $campaigns }. Tofauti inayotokana na kampeni kama hiyo haiaminiki zaidi ya tathmini yake.
caveat-few-days = Siku chache
caveat-few-days-text = { $campaigns }: vipindi vilivyotumika vya siku moja au mbili, kwa hiyo ni vigumu kujua siku hutofautiana kiasi gani.
caveat-limits = Vikomo
# { $first }: calls-name of the campaign that was named first. caveat-limits-one of the others
# follow.
caveat-limits-text = Hazikutathminiwa kwa vikomo sawa na { $first }, na zinalinganishwa hata hivyo.
# { $departures }: some of departure-…-said, with ";" between them.
# As in English
caveat-limits-one = { $campaigns }: { $departures }.
caveat-irradiance = Mnururisho
# { $ways }: some of caveat-irradiance-one, or one caveat-irradiance-all, with ";" between them.
caveat-irradiance-text = Haukupimwa kwa njia moja: { $ways }.
# Follows it.
caveat-irradiance-uncovered = Hakuna utovu wa uhakika hapa unaohusisha kwamba kihisi kililala bapa au kwamba bapa lake halikutajwa.
caveat-irradiance-same = Wa kampeni zote: { $ways }.
# { $way }: one of the next four.
# As in English
caveat-irradiance-one = { $way }: { $campaigns }
# As in English
caveat-irradiance-all = { $way }
caveat-way-normal = kihisi kililielekea jua
caveat-way-flat = kihisi kililala bapa
caveat-way-not-stated = bapa halikutajwa, limechukuliwa kuwa linalielekea jua
caveat-way-estimated = umekadiriwa { $way }
# { $name }: a place or a person.
# As in English
caveat-group = { $name }: { $campaigns }
caveat-sites = Mahali
caveat-sites-text = { $sites }. Anga, hewa na upepo havikuwa sawa.
caveat-testers = Wapimaji
# As in English
caveat-testers-text = { $testers }.
caveat-sensors = Vihisi
caveat-sensors-none = Hakuna kampeni mbili zinazotoa id moja kwa kihisi cha mnururisho: hakuna kosa lolote la vihisi vya mnururisho linalofutana katika tofauti.
# { $groups }: some of calls-numbers, with ";" between them.
caveat-sensors-text = Kihisi kilekile cha mnururisho, kwa id yake: { $groups }. Katika tofauti nyingine zote hakuna kosa lolote la vihisi vya mnururisho linalofutana.
# Follows either of the two, where irradiance was estimated.
caveat-sensors-one-sky = Kosa la makadirio yaliyofanywa kwa njia ileile, mahali pamoja katika siku zilezile, hufutana hata hivyo.

## Comparison: the figure


## Comparison: tables of page one

# Means over the used intervals.
ratings-conforms = inakidhi
ratings-conforms-with-notes = inakidhi, pamoja na maelezo
ratings-indicative = elekezi tu
ratings-not-valid = si halali
ratings-no-rating = hakuna tathmini
# A cell: the rating for each piece of money. { $currency }: as the tester wrote it.
# As in English
per-unit-of-cost = { $rating } W/{ $currency }
# Cells: a time with its range.
# As in English
heating-time = { $best } ({ $shortest } – { $longest })
heating-time-or-never = { $best } ({ $shortest } – kamwe)
heating-never = hayafiki hapo

## Comparison: caution on page one

caution-compared = Nyuso zenye moto na mvuke huunguza, kitovu cha mwanga kinaweza kupofusha na kuwasha moto, na tathmini hizi hazisemi lolote kuhusu usalama wa chakula. Soma tahadhari zilizo katika sehemu ya { $section } kabla hujapika. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.

## Comparison: differences

section-differences = Tofauti, na msingi wake
# Labels, with little room.
difference-verdict = tofauti
# As in English
difference-p = p
difference-method = mtawanyiko na siku
# A difference with its 95 % interval, in watts.
# As in English
difference-with-interval = { $difference } (95 %: { $interval })
difference-with-interval-one-day = { $difference } (si 95 %: { $interval })
# Whether the difference is real.
difference-apart = kila moja kwa siku zake
difference-paired = zimeoanishwa kwa siku, { $days ->
        [one] siku { $days }
       *[other] siku { $days }
    }
difference-real = halisi
difference-not-shown = haijaonyeshwa
# In place of real and not shown, where irradiance differed.
difference-scaled = jua hutofautiana
# The same where the plane of irradiance differed.
difference-planes = mabapa hutofautiana
# As in English
difference-of-ratings = Ps(50)
difference-of-common = nguvu kwa 700 W/m², 50 K
# { $pair }: "B − A".
# { $figure }: difference-of-ratings or difference-of-common.
pair-budget-title = Utovu wa uhakika wa tofauti: { $figure }
# Headers: what a source gives the difference, and what it would give it if the campaigns
# had no instrument in common.
page-comparison-source = chanzo
page-comparison-shared = katika tofauti
page-comparison-apart = kama hakuna kinachoshirikiwa
pair-budget-scatter = mtawanyiko na siku
pair-budget-combined = uliojumuishwa
pair-budget-expanded = uliopanuliwa, 95 %, k = { $factor }
pair-budget-expanded-one-day = uliopanuliwa, bila siku na si wa 95 %, k = { $factor }

## Comparison: the campaigns

section-campaigns = Kampeni
page-campaigns-alike = Sawa katika kampeni zote
campaigns-type = aina
campaigns-tests = Majiko na majaribio
campaigns-area = eneo la kupokea mwanga
campaigns-mass = uzito
campaigns-cost = gharama
campaigns-dates = lilijaribiwa
campaigns-runs = duru
campaigns-place = mahali
campaigns-tester = mpimaji
campaigns-report = ripoti
campaigns-results = Mistari, mizania ya joto, hali
# a and b are symbols; Ps and Td too.
campaigns-line = Mstari Ps = a − b·Td
# As in English
campaigns-intercept = a, W
# As in English
campaigns-slope = b, W/K
campaigns-range = kutoka – hadi
# As in English
campaigns-r-squared = R²
campaigns-intervals = vipindi
campaigns-days = siku
campaigns-balance = Mizania ya joto, na ±
campaigns-gain = pato, m²
campaigns-loss = upotevu, W/K
campaigns-power = W kwa 700 W/m², 50 K
campaigns-around = Wastani wa vipindi vilivyotumika
# As in English
campaigns-sun = W/m²
campaigns-air = hewa
campaigns-wind = upepo
# Below or in place of a table of instruments.
campaigns-instruments-described = Kila mstari ni maelezo, ambayo yanaweza kuwa ya vifaa kadhaa: ni pale tu penye id ndani ya mabano ndipo ni kifaa kimoja na kilekile katika kampeni zake zote.
campaigns-instruments-many = Vifaa { $count } kwa jumla: kila kimoja kiko katika ripoti ya kampeni yake.
campaigns-all = Zote
comparison-not-stated = bila kutajwa

## Comparison: method and provenance

section-method = Mbinu na asili
page-comparison-made-with = Imetengenezwa kwa
# Titles of standards stay as they are.
comparison-practice = ASAE S580.1 kwa kila tathmini; JCGM 100:2008 kwa tofauti
comparison-note-ratings = Kila tathmini ni ile ya kiwango: Ps(50), inayosomwa kwenye mstari kwa Td = 50 K. Hubadilisha nguvu kwa uwiano hadi 700 W/m², upotevu wa joto pia. Pale ambapo wastani wa mnururisho wa majaribio yote mawili unafanana, tofauti inayoitwa halisi au isiyoonyeshwa ni ile ya tathmini.
comparison-note-suns = Pale ambapo wastani wa mnururisho hutofautiana kwa zaidi ya { $percent } %, ni tofauti ya nguvu kwa 700 W/m² na 50 K kwa mizania za joto. Mizania ya joto ni P = g·G − u·Td, inayolinganishwa na kila kipindi chenye vipimo vizuri. Huchukua kuwa pato g na upotevu u ni yaleyale chini ya jua zote mbili; hakuna upepo unaosahihishwa.
comparison-note-planes = Pale ambapo mnururisho wa moja uko katika bapa jingine kuliko wa nyingine, hakuna tofauti inayoitwa halisi au isiyoonyeshwa: si tathmini wala mapato kwa kila W/m² yanayoweza kulinganishwa hapo.
comparison-note-uncertainty = Utovu wa uhakika wa tofauti una mtawanyiko na siku za kampeni zote mbili, kila moja kwa kuacha siku moja kwa wakati, na kile ambacho vifaa vyake havishiriki. Vifaa ni kimoja na kilekile pale ambapo faili za kampeni zinatoa id moja; visivyo na id huhesabiwa kuwa tofauti, jambo ambalo hukuza utovu wa uhakika. Kosa la makadirio ya mnururisho ni kosa moja pale ambapo yote mawili yalikadiriwa kwa njia ileile, mahali pamoja katika siku zilezile. Joto mahususi ni la pamoja kwa zote.
comparison-note-paired = Pale ambapo zote mbili zilijaribiwa katika siku zilezile mahali pamoja, siku tatu au zaidi, kila siku huachwa nje katika zote mbili kwa pamoja, ili kile ambacho siku huzifanyia zote mbili kifutane: hapa katika { $paired } kati ya { $pairs ->
        [one] jozi { $pairs }
       *[other] jozi { $pairs }
    }.
comparison-note-p = p ni uwezekano wa tofauti kubwa hivi ikiwa hakuna tofauti (Student t, Cochran & Cox); p iliyosahihishwa huzingatia { $pairs ->
        [one] jozi { $pairs } inayoweza kulinganishwa
       *[other] jozi { $pairs } zinazoweza kulinganishwa
    } kwa mbinu ya Holm. Zote mbili ni za tofauti inayoamua: ya tathmini, au ya nguvu kwa 700 W/m². Tofauti huitwa halisi pale ambapo p iliyosahihishwa iko chini ya 0.05 na zote mbili zilijaribiwa kwa siku kadhaa.
comparison-note-groups = Kampeni zisizoweza kutofautishwa si lazima zifanane: ya kwanza inaweza kuwa hivyo na ya pili, na ya pili na ya tatu, ilhali ya kwanza na ya tatu hutofautiana. Makundi ni yale ya onyesho fupi la herufi, compact letter display (Piepho 2004, Journal of Computational and Graphical Statistics 13, 456–466): kati ya kampeni zinazoweza kulinganishwa, moja kwa moja au kupitia nyingine, mbili zina kundi la pamoja ikiwa, na tu ikiwa, haziwezi kutofautishwa, haziwezi kulinganishwa, au hazikujaribiwa kwa siku kadhaa kila moja.
comparison-note-causes = Sababu hutokana na tofauti za g na u, kila moja pamoja na mtawanyiko, siku na vifaa. Sababu hutajwa pale ambapo tofauti ni halisi na p ya g au ya u iko chini ya 0.05; p hizi hazikusahihishwa kwa idadi ya jozi.
comparison-note-needed = Siku zinazohitajika zaidi: kwa uwezekano wa nne kati ya tano kuonyesha tofauti ya ukubwa huo kwa 95 %, ikiwa siku na mtawanyiko zitabaki kama zilivyoonekana.
comparison-note-reports = Kila tathmini ina ripoti yake, yenye vipimo, masharti na bajeti yake.

# The plan of a test day, for the terminal and for the field sheet: one page for a pencil,
# on which everything is small. Times of day such as { $from } and { $noon } are "10:33".

## Field sheet: head

# { $weekday }: a message that begins with weekday-. { $date }: as in the report.
# As in English
plan-day = { $weekday } { $date }
# On the terminal; { $day }: plan-day, { $title }: the campaign's.
# As in English
plan-title = { $day }: { $title }
plan-title-none = { $day }: hakuna wakati wa siku hii unaoweza kutumika, kwa hiyo hakuna karatasi ya uwandani. { $title }
# Labels of lines on the terminal, and headers of its table of the sun: there is little room.
plan-run = duru
plan-lacks = bado
plan-place = mahali
plan-place-text = { $site }, saa za { $zone }
plan-elevation = kimo, °
plan-azimuth = azimuthi, °
plan-normal = pembemraba, W/m²
plan-horizontal = mlalo, W/m²
# As in English
plan-range = 95 %, { $unit }
plan-range-one-day = masafa, { $unit }
plan-power = nguvu, W
plan-not-rated = imepangwa kama kwa siku ya kwanza, kwa kuwa rekodi bado haziwezi kutathminiwa
weekday-1 = Jumatatu
weekday-2 = Jumanne
weekday-3 = Jumatano
weekday-4 = Alhamisi
weekday-5 = Ijumaa
weekday-6 = Jumamosi
weekday-7 = Jumapili
# { $zone }: the name of a time zone, such as Europe/Madrid. Many speakers count the hours of
# the day from six in the morning, so it is said that these begin at midnight.
sheet-subtitle = { $day } · { $site } · saa za { $zone }, kuanzia usiku wa manane
sheet-mark = Data za kubuni, kwa maonyesho

## Field sheet: sun, water, aiming
#
# What stands at the left has room for 13 letters, else it goes onto two lines.

plan-sun = jua
plan-sun-course = huchomoza { $rise }, adhuhuri ya jua { $noon }, huzama { $set }
plan-sun-no-rise = halichomozi, adhuhuri ya jua { $noon }, huzama { $set }
plan-sun-no-set = huchomoza { $rise }, adhuhuri ya jua { $noon }, halizami
plan-sun-neither = halichomozi, adhuhuri ya jua { $noon }, halizami
plan-sun-always = halizami; adhuhuri ya jua { $noon }
plan-sun-never = halichomozi
# The hours about noon in which the practice lets one test.
plan-window = dirisha la jua
plan-window-text = { $clocks } kwa saa ({ $from } hadi { $to } kwa wakati wa jua)
# Two times of day.
plan-clocks = { $from } hadi { $to }
plan-clear-sky = anga safi
# plan-too-much may follow, after a semicolon.
plan-enough-all-through = { $least } W/m² au zaidi kwenye bapa lililo pembemraba na miale ya jua kuanzia { $clocks }, yaani katika dirisha lote la jua
plan-enough-in-window = { $least } W/m² au zaidi kwenye bapa lililo pembemraba na miale ya jua kuanzia { $clocks }, ndani ya dirisha la jua kuanzia { $usable }
plan-too-much = juu ya { $most } W/m² vipindi huwekwa kando pia, na anga safi sana hapa hutoa hadi { $highest }
plan-enough-outside = { $least } W/m² kuanzia { $clocks } tu, nje ya dirisha la jua: hakuna kipindi cha siku hii kinachoweza kutumika
plan-never-enough = haifiki kamwe { $least } W/m² (juu kabisa { $highest }): hakuna kipindi cha siku hii kinachoweza kutumika
plan-water = maji
# { $load }, { $each }, { $vessel }: masses with their unit. plan-load-stated may follow, after
# a semicolon.
plan-load-one = { $load }: { $each } kwa kila m² ya eneo la kupokea mwanga ({ $area }), katika chombo kimoja
plan-load-several = { $load }: { $each } kwa kila m² ya eneo la kupokea mwanga ({ $area }), { $vessel } katika kila kimoja cha vyombo { $vessels }
plan-load-stated = faili ya kampeni inasema { $stated }
# From and up to which temperature of the water its readings count.
plan-start = kuanzia
plan-start-above = { $difference } juu ya hewa, kwa mfano { $start } hewa ikiwa { $air }
plan-stop = hadi
plan-stop-text = { $stop }; maji huchemka kwa { $boiling } hapa
# In the unit of the tester's thermometer, with °C or K in brackets.
# As in English
plan-temperature = { $temperature } { $unit } ({ $celsius } °C)
# As in English
plan-difference = { $difference } { $unit } ({ $kelvin } K)
# A run of the dry vessel, or of a load that cools: when it begins, what is read, when it ends.
plan-begin = kuanza
plan-read = kusoma
plan-end = mwisho
plan-high-sun = jua la juu
# { $clocks }: two times of day. { $from }, { $to }: the same by the sun.
plan-high-sun-text = { $clocks } kwa saa ({ $from } hadi { $to } kwa wakati wa jua), jua likiwa juu na likibadilika kidogo zaidi; mazoea ya kawaida, hakuna chanzo kilichochapishwa
plan-high-sun-most = hadi { $highest } W/m² kwenye bapa lililo pembemraba na miale ya jua
plan-high-sun-weak = si zaidi ya { $highest } W/m² kwenye bapa lililo pembemraba na miale ya jua: kilele tulivu hukubaliwa juu ya { $least } W/m² tu, kwa hiyo chagua siku nyingine
plan-high-sun-none = si zaidi ya { $highest } W/m² kwenye bapa lililo pembemraba na miale ya jua: hakuna wakati wa siku hii unaofaa
plan-dry-begin = kwa chombo kitupu na kikavu, baridi kama hewa, kikiwa na kifuniko, jiko likiwa limeelekezwa
plan-dry-read = chombo kila baada ya dakika 5 hadi 20, hewa angalau kila mara ya pili, hadi chombo kiwe kimebaki vilevile kwa nusu saa; kwa saa moja kwa kipimajoto cha mshale chenye hatua za 10 °F au 5 °C
plan-dry-read-sun = chombo na mnururisho kila baada ya dakika 5 hadi 20, hewa angalau kila mara ya pili, hadi chombo kiwe kimebaki vilevile kwa nusu saa; kwa saa moja kwa kipimajoto cha mshale chenye hatua za 10 °F au 5 °C
plan-cooling-load = mengi kama katika duru za kupasha maji, { $load }
plan-cooling-load-unstated = mengi kama katika duru za kupasha maji; yapime kwa mizani
plan-cooling-begin = kwa maji yanayokaribia kuchemka (huchemka kwa { $boiling } hapa), kifuniko kikiwa kimefunikwa, jiko likiwa kivulini au limegeuzwa mbali na jua
plan-cooling-read = maji kila baada ya dakika { $minutes }, hewa angalau kila mara ya pili; mnururisho hauhitajiki
# { $difference }: in K. { $end }, { $air }: temperatures.
plan-cooling-end = maji yanapokuwa { $difference } juu ya hewa, kwa mfano { $end } hewa ikiwa { $air }
# To turn the cooker to the sun.
plan-aim = kuelekeza
plan-aim-unknown = nusu ya pembe ya kupokea mwanga haikutajwa, kwa hiyo nyakati hazikutolewa. Mazoea ya kawaida, hakuna chanzo kilichochapishwa: kiakisi kisicho na kina chenye pande nyingi takriban kila dakika 45, ambamo jua husonga takriban 11°, dishi lenye kitovu kidogo kila dakika 10 hadi 15.
plan-aim-no-time = hakuna wakati wa siku hii unaoweza kutumika
# { $clocks }: one time of day or several. { $angle }: degrees.
plan-aim-once = saa { $clocks } tu: { $angle }° zinatosha kwa dirisha lote
plan-aim-drive = wakati wote, kwa mtambo: jua husonga { $angle }° kwa chini ya { $time }
plan-aim-at = saa { $clocks }; jua husonga { $angle }°, nusu ya pembe ya kupokea mwanga, kwa muda huo ({ $minutes } min)
plan-aim-every = kila { $minutes } min kuanzia { $first }; jua husonga { $angle }°, nusu ya pembe ya kupokea mwanga, kwa muda huo
plan-aim-shown = { $when }. Pembe haikutajwa: ni mwisho wa chini wa kile ambacho duru zimeonyesha hadi sasa, { $shown }

## Field sheet: what is missing

# Two of these follow each other. { $missing }: "9 more intervals and 1 more day".
plan-missing = Bado vinahitajika: { $missing }.
plan-missing-nothing = Vipindi na siku tayari vinatosha.
plan-gives-none = Siku hii haiwezi kutoa chochote.
plan-gives = Siku hii inaweza kutoa si zaidi ya { $most ->
        [one] kipindi { $most } cha dakika { $minutes }
       *[other] vipindi { $most } vya dakika { $minutes }
    }.
plan-gives-by-heating = Siku hii inaweza kutoa si zaidi ya { $most ->
        [one] kipindi { $most } cha dakika { $minutes }
       *[other] vipindi { $most } vya dakika { $minutes }
    }; upashaji mmoja wa mzigo huu takriban { $heating }, kisha anza tena kwa maji mapya.

## Field sheet: before the first reading

check-shade = hakuna kivuli kwenye jiko hadi mwisho
check-wind = upepo hafifu: moshi unapeperuka, majani yametulia
check-weighed = maji yamepimwa kwa mizani, si kwa kikombe
check-sensor = kihisi ndani ya maji, 10 mm juu ya kitako, mbali na ukuta
check-lid = kifuniko kimefunikwa, na kinabaki hivyo
check-air = kipimajoto cha hewa kivulini, nje ya mwanga wa jiko
check-irradiance = kihisi cha mnururisho ni safi na kinalielekea jua
check-irradiance-flat = kihisi cha mnururisho ni safi na kimelala bapa, kando ya jiko
check-aimed = limeelekezwa, na hakuna kinachoungua karibu na kitovu cha mwanga
check-empty = chombo kitupu, kikavu na safi: bila maji, chakula wala mafuta
check-no-plastic = hakuna plastiki wala mpako usioshika chakula (non-stick): hupata joto la juu sana kuliko 100 °C
check-dial = kipimajoto ndani au juu ya chombo, nje ya miale; kinabaki hapo
check-mirrors = viakisi vya sanduku vimefunikwa au kukunjwa, kwa namba zake za ubora
check-no-sun = hakuna jua kwenye jiko hadi mwisho: kivulini, au limegeuzwa
check-in-place = sufuria mahali pake ndani ya jiko, kama inapopashwa
# Lines to write on.
sheet-tester = mpimaji
sheet-weighed = maji yaliyopimwa, { $unit }
sheet-began = kipimo cha kwanza, saa

## Field sheet: the table to fill in
#
# Columns are narrow: words of more than ten letters are broken.

sheet-clock = saa
sheet-after = dakika
sheet-vessel = chombo, { $unit }
sheet-water = maji, { $unit }
sheet-air = hewa, { $unit }
# Bft: Beaufort.
sheet-wind = upepo, Bft
sheet-sky = anga: safi au wingu
sheet-irradiance = mnururisho, W/m²
sheet-expected = tarajio, { $unit }
sheet-aim = kuelekeza
sheet-notes = maelezo

## Field sheet: foot

# { $forces }: sheet-force of the lowest numbers, with ";" between them.
sheet-forces = Upepo kwa macho, Beaufort (WMO-No. 8): { $forces }.
# As in English
sheet-force = { $number } { $sign } ({ $speeds })
# What one sees of the wind on land, at each number of the Beaufort scale.
wind-sign-0 = moshi hupanda wima
wind-sign-1 = moshi hupeperuka, vielekeza upepo hutulia
wind-sign-2 = huhisiwa usoni, majani huchakarika
wind-sign-3 = majani na vijiti vidogo husogea mfululizo
wind-sign-4 = vumbi na karatasi zilizolegea huinuka
wind-sign-5 = miti midogo huyumba
wind-sign-6 = matawi makubwa husogea
wind-sign-7 = miti mizima husogea
wind-sign-8 = vijiti hukatika mitini
# What the column of expected temperatures rests on. { $start }, { $air }: temperatures.
# { $spread }: "95 %", or plan-spread-one-day.
plan-expected = Tarajio la jiko kama lilivyotathminiwa hadi sasa, Ps(50) = { $power } W ± { $expanded } W ({ $spread }): { $load } zikipashwa kuanzia { $start } chini ya anga safi, katika hewa ya { $air } kama katika majaribio yake; pamoja na masafa yake. Maji yaliyo chini sana ya hapo huashiria ukungu, upepo, uelekeo usio sahihi au kifuniko kilicholegea.
# As in English
plan-spread = 95 %
plan-spread-one-day = si 95 %
# The models behind the numbers.
plan-models = Anga safi kwa mujibu wa Ineichen na Perez 2002 kwa { $elevation }, utusitusi wa Linke { $turbidity } (wa kawaida kwa anga safi); ukungu na vumbi hutoa pungufu. Jua kwa mujibu wa NREL/TP-560-34302; upeo wa macho ulio tambarare.
plan-models-stated = Anga safi kwa mujibu wa Ineichen na Perez 2002 kwa { $elevation }, utusitusi wa Linke { $turbidity } (kama ulivyotajwa); ukungu na vumbi hutoa pungufu. Jua kwa mujibu wa NREL/TP-560-34302; upeo wa macho ulio tambarare.
page-sheet-checks = Kabla ya kipimo cha kwanza
# Above the columns that a field sheet has for the pencil, on a phone.
page-sheet-read = Ya kuandika kila wakati
page-sheet-caution = Tahadhari.
caution-field-sheet = Usiangalie kamwe ndani ya kitovu cha mwanga wala jua. Metali yenye moto na mvuke huunguza: glavu, kifuniko kielekee mbali nawe. Weka mbali watoto na kila kinachoungua; baki na jiko; ligeuze mbali na jua kabla ya kuingiza mkono; lifunge chini dhidi ya upepo. Kivuli na maji kwa ajili yako. Mwaga maji ya jaribio. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.
# Of a dry vessel, and of a load that cools.
caution-field-sheet-dry = Chombo kikavu hupata joto la juu sana kuliko 100 °C: huunguza kwa kuguswa, na hubaki na moto muda mrefu baadaye. Plastiki huyeyuka na mipako hutoa mafusho: usiweke vyote viwili. Usimwage kamwe maji ndani yake kikiwa na moto: hurusha matone na hupasuka. Nyasi kavu, vitambaa na mafuta yaliyoachwa ardhini hushika moto: ardhi tupu, maji au mchanga karibu, na mtu anayebaki. Usiangalie kamwe ndani ya kitovu cha mwanga wala jua; geuza jiko mbali nalo kabla ya kuingiza mkono; glavu kavu. Weka watoto mbali; lifunge chini dhidi ya upepo. Kivuli na maji kwa ajili yako. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.
caution-field-sheet-cooling = Sufuria ya maji yanayokaribia kuchemka hubebwa: njia iwe wazi, asiwepo mtu ndani yake, kifuniko kishikwe, mikono yote miwili katika glavu kavu; afadhali kuiweka chini kuliko kuharakisha. Mvuke huunguza: kifuniko kielekee mbali nawe. Usiangalie kamwe ndani ya kitovu cha mwanga wala jua; geuza jiko mbali nalo, au litie kivuli, kabla ya kuingiza mkono, na angalia kitovu kinakwenda wapi wakati huo. Weka watoto mbali; baki na jiko. Mwaga maji ya jaribio. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.

## Kinds of run, and what vessels store

run-kind-water = kupasha maji
run-kind-cooling = kupoa, kivulini
run-kind-dry = chombo kikavu
vessel-heat-stated = umetajwa katika faili ya kampeni
vessel-heat-weighed = { $mass } za { $material } kwa { $heat } J/(kg K) (EN 12524:2000, kama maktaba huria ya programu inavyoinukuu)
material-aluminium = alumini
material-cast-iron = chuma cha kalibu
material-steel = feleji
material-stainless-steel = feleji isiyoshika kutu
material-copper = shaba nyekundu
material-glass = kioo
material-ceramic = kauri
material-fired-clay = udongo uliochomwa
tested-vessel-heat = uwezo wa vyombo kuhifadhi joto
# As in English
tested-vessel-heat-text = { $heat } J/K: { $basis }
tested-loss-area = eneo la vyombo linalopoteza joto
# As in English
tested-no-water = hakuna: hakuna duru ya kampeni hii inayopasha maji
tested-vessel-temperature = halijoto ya chombo
error-vessel-temperature = kipimajoto cha chombo
error-vessel-heat = uwezo wa vyombo kuhifadhi joto
known-vessel-heat = ndani ya { $percent } % ya thamani iliyotajwa
budget-not-told-apart = hautenganishwi katika ripoti hii
tested-instruments-note-dry = Utovu sanifu wa uhakika (k = 1); kwa daraja, vikomo vyake. Pale ambapo hakuna kati ya hivi kilichotajwa, daraja la tahadhari kubwa zaidi hukisiwa: kwa chombo, kipimajoto cha oveni chenye mshale, ndani ya ± 10 K (mazoea ya kawaida).

## Page one of a campaign that heats no water

report-kind-without-water = Ripoti ya majaribio ya jiko la jua bila tathmini
headline-label-none = Bado hakuna namba
headline-no-water = Hakuna tathmini kwa mujibu wa ASAE S580.1: hakuna duru ya kampeni hii inayopasha maji.
headline-spread = Masafa ya 95 %: siku, vipimo, vifaa.
headline-spread-one-day = Masafa bila siku: vipimo, vifaa; si ya 95 %.
headline-dry-plateau = Katika { $irradiance } W/m² chombo kitupu kilifika { $vessel }: { $difference } juu ya hewa ya { $ambient }.
fact-reached = Kilifika
fact-good-for = Hufaa kwa
fact-not-with = Usilinganishe na
headline-no-water-means = Hakuna kati ya hizi iliyo nguvu ya kupikia. Pasha mzigo wa maji uliopimwa kwa mizani ili ujue jiko hupika kwa kasi gani.
headline-nothing-drawn = Hakuna kilichoweza kuchorwa: kasoro zilizotajwa zinasema kwa nini.

## All figures at a glance (page two)

summary-title = Namba zote kwa mtazamo mmoja
# Headers of a table of four columns.
page-summary-figure = namba
page-summary-value = thamani ± nusu ya upana
page-summary-good-for = hufaa kwa
page-summary-not-with = usilinganishe na
summary-one-day = (si 95 %)
summary-indicative = (elekezi)
summary-note = Kila ± ni kwa 95 %: siku, vipimo (pamoja na mtawanyiko wake pale mstari unapolinganishwa navyo), na vifaa kwa utovu wa uhakika uliotajwa au uliokisiwa. Maeneo huhesabiwa kuwa kamili.
# The same where figures without days are among them; the next message follows it.
summary-note-some = Kila ± ni kwa 95 %, isipokuwa palipoandikwa “si 95 %”: siku, vipimo (pamoja na mtawanyiko wake pale mstari unapolinganishwa navyo), na vifaa kwa utovu wa uhakika uliotajwa au uliokisiwa. Maeneo huhesabiwa kuwa kamili.
summary-note-one-day = Palipoandikwa “si 95 %”, tofauti za siku kwa siku hazimo katika ±, kwa hiyo si ya 95 %.
summary-note-indicative = Palipoandikwa “elekezi”, masharti ya utaratibu hayakutimizwa, au mnururisho umekadiriwa.
figure-ps50 = nguvu sanifu ya kupikia
figure-ps50-good-for = kulinganisha majiko yaliyotathminiwa kwa kiwango kilekile
figure-ps50-not-with = nguvu kwa mnururisho mwingine, au tathmini za kiwango kingine
figure-gain = pato kutoka kwa jua
figure-gain-good-for = kutaja nguvu kwa mnururisho wowote, pamoja na u
figure-gain-not-with = pato kwa kihisi kilicho katika bapa jingine
figure-loss = upotevu kwa hewa
figure-loss-good-for = kuona kizuia joto kinasaidia kiasi gani
figure-loss-not-with = upotevu katika upepo mwingine, au kwa kila m²
figure-opto-thermal-ratio = uwiano wa mwanga na joto (opto-thermal ratio)
figure-opto-thermal-ratio-good-for = kujua mzigo unaweza kufikia joto gani, uwe mkubwa au mdogo
figure-opto-thermal-ratio-not-with = F1, ambayo ni ya jiko tupu
figure-dry-difference = chombo kikavu juu ya hewa, kwa kila W/m²
figure-dry-difference-good-for = kulinganisha matoleo ya jiko moja kwa sufuria ileile
figure-dry-difference-not-with = sufuria nyingine, au kihisi kilicho katika bapa jingine; si nguvu ya kupikia
figure-f1 = namba ya kwanza ya ubora (figure of merit)
figure-f1-good-for = kulinganisha majiko ya sanduku, yakiwa matupu
figure-f1-not-with = thamani za kihisi kinacholielekea jua, au zenye viakisi visivyofunikwa
figure-f2 = namba ya pili ya ubora (figure of merit)
figure-f2-good-for = kulinganisha majiko ya sanduku kwa mzigo kamili
figure-f2-not-with = mizigo mingine au ncha nyingine za upandaji
figure-box-boiling = muda wa kuchemka kuanzia halijoto ya mazingira
figure-box-boiling-good-for = kusema mzigo huu huchukua muda gani, katika jua hili
figure-box-boiling-not-with = muda wa mzigo mwingine, jua jingine au mwinuko mwingine
figure-time-constant = muda bainifu wa kupoa (time constant)
figure-time-constant-good-for = kusema mzigo huu hubaki na joto kwa muda gani kivulini
figure-time-constant-not-with = mizigo mingine: huongezeka pamoja na maji
figure-loss-factor = kigezo cha upotevu (loss factor)
figure-loss-factor-good-for = kulinganisha vyombo na vifungashio vyake
figure-loss-factor-not-with = vigezo vya eneo jingine, au katika upepo mwingine
figure-optical-factor = kigezo cha mwanga (optical factor)
figure-optical-factor-good-for = kulinganisha viakisi na uelekezaji wake
figure-optical-factor-not-with = vigezo vya mnururisho wa miale pekee, pale ambapo huu ni wa anga lote
figure-dish-boiling = muda wa kuchemka kuanzia halijoto ya mazingira
figure-dish-boiling-good-for = kusema mzigo huu huchukua muda gani, katika jua hili
figure-dish-boiling-not-with = muda wa mzigo mwingine, jua jingine au mwinuko mwingine
figure-energy = ufanisi wa nishati
figure-energy-good-for = kulinganisha majaribio ya masafa yaleyale ya halijoto ya maji
figure-energy-not-with = ufanisi katika masafa mengine, au kwa mzigo baridi
figure-exergy = ufanisi wa eksergia (exergy)
figure-exergy-good-for = kulinganisha kama kwa nishati, maji ya moto yakihesabiwa zaidi
figure-exergy-not-with = thamani zenye halijoto nyingine ya jua au masafa mengine
figure-peak-exergy = kilele cha eksergia (exergy)
figure-peak-exergy-good-for = kulinganisha majiko ya ukubwa mmoja chini ya jua lilelile
figure-peak-exergy-not-with = vilele katika mnururisho mwingine
figure-quality-factor = kigezo cha ubora (quality factor)
figure-quality-factor-good-for = kulinganisha pato na upotevu kwenye kilele
figure-quality-factor-not-with = makala zinazofafanua upotevu kwa njia nyingine

## Procedures beside the rating

# As in English
procedure-label = { $name }, { $symbol }
# { $value } with its ±, or alone; { $unit }, or nothing.
# As in English
procedure-value = { $value } { $unit }
# An interval that reaches further on one side.
procedure-value-between = { $value } ({ $lower } hadi { $upper })
procedure-value-alone = { $value } (± haikutolewa)
procedure-spread = ± kwa 95 %: siku, vipimo, vifaa
procedure-spread-one-day = ± bila siku, si 95 %: vipimo, vifaa
page-procedure-quantity = kipimo
procedure-boiling = Muda wa kuchemka ni wa maji { $load } kutoka { $ambient } hadi { $boiling }, kiwango chake cha kuchemka hapa, katika jua lisilobadilika la { $irradiance } W/m²: wastani wa jaribio. Umekokotolewa, haukupimwa kwa saa.
# { $limit }, °C.
evaporation = juu ya { $limit } sehemu ya joto huingia katika mvuke, jambo ambalo hakuna halijoto inayolionyesha: namba ni za kifuniko kilichofungwa na huhesabu mvuke kuwa upotevu
evaporation-remedy = acha kifuniko kikiwa kimefungwa; linganisha tu majaribio yanayoishia kwenye halijoto zinazofanana

## Dry vessel

section-dry-vessel = Chombo kikavu
dry-what = Chombo kitupu cheusi au bamba tupu huachwa juani hadi kisizidi kupata joto. Halijoto yake juu ya hewa kwa kila W/m² hulinganisha mwanga na upotevu. Si nguvu ya kupikia.
dry-plane-normal = Mnururisho ni wa kihisi kilicholielekea jua.
dry-plane-horizontal = Mnururisho ni wa kihisi kilicholala bapa: linganisha tu na vingine vilivyolala bapa.
dry-plane-estimated = Mnururisho umekadiriwa.
dry-plane-not-stated = Bapa la kihisi cha mnururisho halikutajwa: usilinganishe na thamani nyingine yoyote.
# { $runs }: more than one.
dry-mean-of = Thamani ni wastani wa { $runs ->
    [one] duru { $runs } yenye
   *[other] duru { $runs } zenye
} kilele tulivu.
# Headers of a table with a row a run: there is little room.
dry-head-run = duru
dry-head-plateau = kilele, { $unit }
dry-head-ambient = hewa, { $unit }
dry-head-irradiance = jua, W/m²
# As in English
dry-head-difference = K m²/W
dry-head-initial = mwanzo, K/min
dry-head-reached = min hadi { $level }
dry-caption = Halijoto ya chombo kikavu tangu mwanzo wa kila duru; mstari mnene: kilele tulivu.
dry-alt = Mchoro wa mistari wa halijoto ya chombo kikavu dhidi ya wakati, kwa { $runs ->
    [one] duru { $runs }
   *[other] duru { $runs }
}. Kipimo cha juu kabisa ni { $highest }.
dry-axis-time = muda tangu kipimo cha kwanza, min
dry-axis-vessel = chombo, { $unit }
dry-key-vessel = vipimo
dry-key-plateau = kilele tulivu
dry-source = Kilele tulivu, kwa tafsiri ya mradi huu: kipande chenye joto zaidi cha angalau dakika kumi, kirefu zaidi kwa kipimajoto chenye hatua kubwa, ambamo chombo hupanda au kushuka kwa chini ya 0.1 K/min, na jua hubaki ndani ya ± 20 W/m² na juu ya 600 W/m². Uwiano huu ndio ambao Mullick, Kandpal na Saxena 1987 hutumia kwa majiko ya sanduku. Kupanda kwa mwanzo: katika dakika kumi za kwanza, au vipimo viwili vya kwanza.
dry-no-vessel = rekodi haina halijoto ya chombo
dry-no-vessel-remedy = itaje safuwima ya chombo kama vessel_temperature chini ya [columns]; ikiwa chombo kilikuwa na maji, andika kind = "water"
dry-no-irradiance = rekodi haina mnururisho, kwa hiyo kilele tulivu hakiwezi kulinganishwa na jua
dry-no-irradiance-remedy = andika mnururisho pamoja na kila kipimo, au taja muda usio na mawingu na estimate = "clear-sky"
# { $minutes }: what a plateau takes with this thermometer.
dry-too-short = vipimo vinavyohesabiwa havifikii { $minutes } min bila pengo, muda ambao kilele tulivu huhitaji kwa kipimajoto hiki
dry-too-short-remedy = endelea kusoma, angalau kila dakika ishirini, hadi halijoto iwe imetulia kwa { $minutes } min
dry-sun-unsteady = jua halikubaki kamwe ndani ya ± 20 W/m² za wastani wake kwa { $minutes } min
dry-sun-unsteady-remedy = jaribu chini ya anga safi karibu na adhuhuri ya jua
dry-sun-weak = jua lilikuwa thabiti, lakini kwa si zaidi ya { $highest } W/m², chini ya 600 W/m²
dry-sun-weak-remedy = jaribu karibu na adhuhuri ya jua, katika msimu wenye jua kali zaidi, au bila ukungu
# { $rate } in K/min, { $vessel } in °C.
dry-still-rises = hakuna kilele tulivu: katika kipande chake thabiti chenye joto zaidi, kwenye { $vessel }, chombo kilikuwa bado kikipanda kwa { $rate } K/min
dry-still-falls = hakuna kilele tulivu: katika kipande chake thabiti chenye joto zaidi, kwenye { $vessel }, chombo kilishuka kwa { $rate } K/min
dry-still-moves-remedy = anza mapema zaidi, elekeza upya, na uendelee hadi halijoto itulie

## Box cooker

section-box-cooker = Namba za ubora za jiko la sanduku
box-what = F1 = (Tp − Ta)/H: jinsi sanduku tupu linavyopanda juu ya hewa kwa kila W/m² katika bapa la mlalo. F2 = F1·M·c·ΔT/[A·τ·(F1·H − (T − Ta))]: jinsi joto lake linavyoingia vizuri katika mzigo kamili, kwa muda τ ambao maji hupanda kwa ΔT; T, Ta na H ni wastani wa muda huo.
box-grade = daraja
box-grade-a = A: masafa yote ya F1 yako juu ya { $limit } K m²/W (IS 13429)
box-grade-none = hakuna: masafa ya F1 hayako yote juu ya { $limit } K m²/W, kikomo cha daraja A (IS 13429); madaraja ya chini hayatathminiwi
box-rests-on-dry = F1 inategemea { $runs ->
    [one] duru kavu { $runs } yenye
   *[other] duru kavu { $runs } zenye
} kilele tulivu.
box-rests-on-water = F2 inategemea { $runs ->
    [one] upandaji { $runs }
   *[other] upandaji { $runs }
} wa maji kutoka { $from } hadi { $to }.
box-caption = Maji kwa muda tangu yalipopita halijoto ya kwanza ya upandaji; mstari mnene: kile ambacho F1 na F2 hutoa katika jua lisilobadilika la wastani uleule.
box-alt = Mchoro wa mistari wa halijoto ya maji dhidi ya wakati, kwa { $runs ->
    [one] upandaji { $runs }
   *[other] upandaji { $runs }
} kutoka { $from } hadi { $to }, pamoja na mikunjo ambayo F1 na F2 hutoa.
box-axis-time = muda tangu mwanzo wa upandaji, min
box-axis-water = maji, { $unit }
box-key-water = vipimo
box-key-told = kwa F1 na F2
box-source = Mullick, Kandpal na Saxena 1987 (Solar Energy 39, 353–360) na IS 13429. Wao huandika F2 kwa logi (logarithm) ya ncha zote mbili: ni sawa katika jua lisilobadilika, na hukosea kwa hadi 2 % katika jua linalobadilika kwa moja ya kumi, zaidi pale F1·H ikiwa karibu na mwisho wa upandaji (kwa maigizo ya kompyuta). Wao huhesabu kuchemka kwa 100 °C, ripoti hii kwa kiwango cha kuchemka cha mahali. Hakuna alama ya kufaulu ya F2 iliyotolewa: mbili hunukuliwa, nazo hazikubaliani.
box-no-dry-run = hakuna duru kavu, kwa hiyo hakuna F1, wala F2 inayoitegemea
box-no-dry-run-remedy = acha sanduku tupu juani karibu na adhuhuri na urekodi halijoto ya bamba lake: kind = "dry"
box-no-plateau = hakuna duru kavu yenye kilele tulivu, kwa hiyo hakuna F1, wala F2
box-no-plateau-remedy = angalia kinachokosekana katika duru kavu
box-plane-normal = mnururisho ulipimwa kwa kulielekea jua; F1 na F2 hufafanuliwa kwa kihisi kilicholala bapa
box-plane-not-stated = bapa la kihisi cha mnururisho halikutajwa; F1 na F2 hufafanuliwa kwa kihisi kilicholala bapa
box-plane-estimated = mnururisho umekadiriwa; F1 na F2 hufafanuliwa kwa kihisi kilicholala bapa
box-plane-remedy = laza kihisi bapa kando ya sanduku, na utaje plane = "horizontal"
box-cover-mirrors = F1 na F2 ni za sanduku ambalo viakisi vyake vya nyongeza, kama vipo, vimefunikwa; hakuna rekodi inayoonyesha hilo
box-cover-mirrors-remedy = vifunike katika duru hizi, na useme hivyo katika maelezo
box-no-water-run = hakuna duru inayopasha maji, kwa hiyo hakuna F2
box-no-heating = hakuna upandaji kutoka { $from } hadi { $to } °C bila pengo, wenye mnururisho, katika { $runs ->
    [one] duru { $runs } ya
   *[other] duru { $runs } za
} maji, kwa hiyo hakuna F2
box-no-heating-remedy = anza chini ya { $from }, endelea juu ya { $to }, na usome angalau kila dakika ishirini
box-runs-left-out = duru za maji zisizo na upandaji kamili kutoka { $from } hadi { $to } °C, ambazo hazikutumika: { $runs }
# Loads in kg/m².
box-load-off = mzigo ulikuwa { $load }; mzigo kamili ni takriban { $full }
box-load-off-remedy = pima kwa mizani { $full } kg za maji kwa kila m² ya kioo; tathmini inataka kilo 7 kwa kila m² ya eneo la kupokea mwanga, kwa hiyo mzigo mmoja hautoshelezi zote mbili kila mara
# Both in K.
box-beyond-reach = katika { $rises ->
    [one] upandaji { $rises }
   *[other] upandaji { $rises }
} maji yalifika { $end } juu ya hewa, zaidi ya F1 hii inavyoruhusu: F1·H hapo ni { $reach }. Upandaji kama huo hautumiki
box-no-upper-end = F1·H ni { $reach }, karibu sana na { $end } ambazo mwisho wa upandaji wa maji uko juu ya hewa, kiasi kwamba F2 haina ncha ya juu
box-near-reach = mwisho wa upandaji wa maji, { $end } juu ya hewa, uko karibu na F1·H, { $reach }: F1 ikipungua kwa 1 % F2 huongezeka kwa { $more } %
box-reach-remedy = jaribu katika jua kali zaidi, au maliza upandaji chini zaidi
box-one-day = duru kavu au upandaji ni wa siku moja, kwa hiyo masafa si masafa ya 95 %
box-one-day-remedy = jaribu katika siku nyingine

## Concentrating cooker

section-dish = Jaribio la kupoa na kupasha
dish-what = Kivulini halijoto ya mzigo juu ya hewa hupungua kwa muda bainifu τ0; upotevu wake ni C/τ0, ambapo C ni uwezo wa maji na vyombo kuhifadhi joto. F′UL ni upotevu huo kwa kila m² ya eneo la vyombo. Juani, F′η0 ni sehemu ya mwanga ulio kwenye eneo la kupokea mwanga ambayo mzigo hufyonza, bila kutoa upotevu.
dish-loss = upotevu kwa hewa kutokana na kupoa, F′UL·At
dish-rests-on-cooling = Upotevu unategemea { $runs ->
    [one] duru { $runs } ya kupoa
   *[other] duru { $runs } za kupoa
}, kutoka { $from } kushuka hadi { $to }.
dish-rests-on-vessels = Uwezo wa vyombo kuhifadhi joto umejumuishwa, { $heat } J/K: { $basis }.
dish-rests-on-heating = Kigezo cha mwanga kinategemea { $runs ->
    [one] upashaji { $runs }
   *[other] upashaji { $runs }
}, kila mmoja kutoka { $margin } juu ya hewa hadi { $margin } chini ya kuchemka, kadiri unavyofika.
dish-caption = Maji juu ya wastani wa halijoto ya hewa tangu mwanzo wa kila duru ya kupoa; mstari mnene: kile ambacho muda bainifu wake hutoa katika hewa isiyobadilika.
dish-alt = Mchoro wa mistari wa halijoto ya maji juu ya hewa dhidi ya wakati, kwa { $runs ->
    [one] duru { $runs } ya kupoa
   *[other] duru { $runs } za kupoa
}, pamoja na mkunjo wa kipeo (exponential). Wastani wa muda bainifu ni dakika { $minutes }.
dish-axis-time = muda tangu kipimo cha kwanza, min
dish-axis-difference = maji juu ya hewa, { $unit }
dish-key-water = vipimo
dish-key-told = kwa muda bainifu
dish-source = Mullick, Kandpal na Kumar 1991 (Solar Energy 46, 139–144). Wao huchukua mteremko wa ln(T − Ta); ripoti hii huchukua ule wa T dhidi ya intigrali ya T − Ta: ni sawa katika hewa isiyobadilika, na ni kweli katika hewa inayopata joto, ambapo ule mwingine hukosea kwa 2 hadi 9 % kwa 1 K/h na muda bainifu wa saa moja hadi mbili (kwa maigizo ya kompyuta). Wao huhesabu kuchemka kwa 100 °C, ripoti hii kwa kiwango cha kuchemka cha mahali.
dish-no-cooling-run = hakuna duru ya kupoa, kwa hiyo hakuna muda bainifu, upotevu wala kigezo cha mwanga
dish-no-cooling-run-remedy = acha mzigo wa moto upoe kivulini, na uurekodi: kind = "cooling"
dish-begins-too-cool = { $log }: maji yanaanza { $above } juu ya hewa, na duru ya kupoa huanza angalau { $least } juu yake; haitumiki
dish-begins-too-cool-remedy = anza karibu na kuchemka
dish-warms = { $log }: maji yalipata joto la { $rise } zaidi ya yalivyokuwa kabla, kwa hiyo jua liliyafikia, au maji ya moto yaliongezwa; haitumiki
dish-warms-remedy = geuza jiko mbali na jua au tia kivuli uwazi wote wa jiko
dish-cooling-too-short = { $log }: kabla ya pengo la zaidi ya dakika ishirini au muda ulioondolewa kuna vipimo vichache mno, au kushuka kwa chini ya moja ya tano ya halijoto ya mwanzo juu ya hewa; haitumiki
dish-cooling-too-short-remedy = soma kila dakika tano au mara nyingi zaidi, kwa saa moja au zaidi
dish-no-loss-area = eneo la vyombo halikutajwa, kwa hiyo upotevu umetolewa kwa W/K pekee
dish-no-loss-area-remedy = taja loss_area_m2 chini ya [cooker]: kuta na kifuniko cha vyombo
dish-no-vessel-heat = uwezo wa vyombo kuhifadhi joto haukutajwa, na haukujumuishwa: upotevu na kigezo cha mwanga ni vidogo mno kwa kiasi hicho
dish-no-vessel-heat-remedy = pima kwa mizani vyombo vikiwa vitupu: vessel_mass_kg na vessel_material chini ya [load]
dish-no-heating = hakuna duru ya maji yenye upandaji wa { $rise } wenye mnururisho, bila mapengo wala muda ulioondolewa, kwa hiyo hakuna kigezo cha mwanga
dish-no-heating-remedy = rekodi upashaji wa angalau { $rise } juani, pamoja na mnururisho
dish-plane-not-normal = mnururisho haukupimwa kwa kulielekea jua, na kigezo cha mwanga ni cha miale ya jua
dish-plane-estimated = mnururisho umekadiriwa, na kigezo cha mwanga huchukua ule wa miale ya jua
dish-plane-remedy = acha kihisi kikilielekea jua, na utaje plane = "normal"
dish-global-not-beam = kihisi kinacholielekea jua huona pia anga lililolizunguka, ambalo kiakisi chenye kitovu cha mwanga hakilitumii: kwa kihisi hicho kigezo cha mwanga huwa chini kuliko kwa miale pekee, kwa takriban moja ya kumi chini ya anga safi sana, na kwa moja ya sita au zaidi katika ukungu (mazoea ya kawaida)
dish-global-not-beam-remedy = sema katika maelezo ikiwa kihisi kiliona miale pekee
dish-no-end = ndani ya utovu wa uhakika wa vifaa, masafa ya mojawapo ya namba hayana mwisho, na haikutolewa
dish-no-end-remedy = pima mnururisho kwa kihisi kinachojulikana vizuri zaidi, na taja utovu wake wa uhakika
dish-one-day = kupoa au kupasha ni kwa siku moja, kwa hiyo masafa si masafa ya 95 %
dish-one-day-remedy = jaribu katika siku nyingine

## Energy and exergy

section-efficiency = Nishati na eksergia (exergy)
efficiency-what = Ufanisi wa nishati: joto ambalo maji yalipokea, gawanya kwa mwanga wa jua ulio kwenye eneo la kupokea mwanga. Ufanisi wa eksergia: vivyo hivyo kwa eksergia, sehemu inayoweza kufanya kazi, ambamo maji ya moto huhesabiwa zaidi ya maji ya vuguvugu. Kilele cha eksergia: ncha ya parabola ya eksergia dhidi ya tofauti ya halijoto; kigezo cha ubora: kilele hicho gawanya kwa eksergia ya joto linalopotea hapo.
# { $range } in °C.
efficiency-rests-on = Namba hizi zinategemea { counted-intervals } vyenye vipimo vizuri, maji ya { $range }, { $irradiance } W/m² kwa wastani. Uwezo wa vyombo kuhifadhi joto haukujumuishwa.
efficiency-peak-at = Kilele kiko { $difference } juu ya hewa, katika jua la jaribio ({ $irradiance } W/m² kwa wastani).
efficiency-caption = Eksergia ambayo maji hupata, kipindi kwa kipindi.
efficiency-caption-no-peak = Eksergia ambayo maji hupata, kipindi kwa kipindi. Hakuna kilele kati ya vipindi.
efficiency-alt = Mchoro wa nukta wa eksergia kwa wati dhidi ya tofauti ya halijoto kwa kelvini, { counted-intervals }.
efficiency-axis-difference = tofauti ya halijoto, Td, { $unit }
efficiency-axis-exergy = eksergia, W
efficiency-key-intervals = vipindi
# As in English
efficiency-key-parabola = parabola
efficiency-source = Eksergia ya mwanga wa jua kwa mujibu wa Petela 1964 jua likiwa 5777 K; eksergia ya maji kwa sheria ya pili ya themodinamiki. Kama Öztürk 2004 na wengine; makala huchagua masafa mengine ya halijoto ya maji, kwa hiyo linganisha tu na masafa yaliyo juu. Kilele na kigezo cha ubora kwa mujibu wa Kumar, Vishwanath na Gupta 2012; kwamba upotevu huko ni eksergia ya joto lililopotea, u·Td·(1 − Ta/T), kwa u ya ripoti hii, ni tafsiri ya mradi huu.
efficiency-plane = mnururisho ulipimwa kwa kihisi kilicholala bapa: pale eneo la kupokea mwanga linapolielekea jua, mwanga wa jua hukadiriwa chini, na ufanisi huwa mkubwa mno
efficiency-plane-remedy = linganisha tu na majaribio ambayo kihisi chake kililala bapa
efficiency-no-peak = eksergia haina nukta ya juu kabisa kati ya vipindi, kwa hiyo hakuna kilele wala kigezo cha ubora
efficiency-no-peak-remedy = jaribu kuanzia { $above } juu ya hewa hadi karibu na kuchemka
efficiency-no-loss = huenda upotevu ni sifuri, kwa hiyo hakuna kigezo cha ubora
efficiency-no-loss-remedy = jaribu kwa masafa mapana zaidi ya halijoto ya maji, na kwa siku zaidi
efficiency-one-day = data zote ni za siku moja, kwa hiyo masafa si ya 95 %
efficiency-one-day-remedy = jaribu katika siku nyingine

## Where no water heats

tested-method-none = hakuna ya kiwango: hakuna duru inayopasha maji
tested-environment-dry = Mazingira ya vilele tulivu
tested-environment-cooling = Mazingira ya duru za kupoa
tested-no-plateau = hakuna kilele tulivu

## On the terminal: the table of report, and what stands below it

# Headers of the table: there is little room.
terminal-campaign = kampeni
# As in English
terminal-rating = Ps(50), W (95 %)
# As in English
terminal-r-squared = R²
terminal-used = vipindi
terminal-days = siku
terminal-conformity = ulinganifu
terminal-report = ripoti
# Data that nobody measured.
terminal-invented = { $title } (ya kubuni)
# What weakens a rating, each behind its level: "indicative only; horizontal sensor".
terminal-irradiance-not-measured = mnururisho haukupimwa
terminal-horizontal = kihisi cha mlalo
terminal-plane-not-stated = bapa la kihisi halikutajwa
terminal-one-day = siku moja tu: ± si ya 95 %
terminal-days-not-in-spread = mtawanyiko wa siku haumo katika ±: si ya 95 %
terminal-extrapolated = imekisiwa hadi 50 K
# Of several campaigns that share a note; { $names }: their names.
terminal-campaigns = kampeni { $count } ({ $names })
terminal-more = nyingine { $count }
# In place of the campaigns above, before the first of several notes that are alike.
terminal-alike = { $campaigns }; ya kwanza
terminal-alike-gravest = { $campaigns }; hali mbaya zaidi, ya kampeni ya kwanza
terminal-alike-times = { $campaigns }, mara { $count }; ya kwanza
# Before a note below the table.
terminal-note = maelezo
# A note, or what a campaign lacks, behind those that it is about; a cell behind its header.
terminal-whose = { $whose }: { $said }
terminal-left-alone =
    { $all ->
        [1] imeachwa kama ilivyo: hakuna kilichobadilika katika yale ambayo ripoti inategemea; --fresh huitengeneza upya
       *[other] kampeni { $count } kati ya { $all } zimeachwa kama zilivyo: hakuna kilichobadilika katika yale ambayo ripoti zake zinategemea; --fresh hutengeneza zote upya
    }
# A note on a campaign; { $names }: long logs.
terminal-kept-beside = { $names } haimo ndani ya PDF: itoe pamoja na ripoti, au tengeneza ripoti kwa --carry-all
# A note on a campaign; { $count }: how many files, { $names }: the first of them.
terminal-unnamed-logs = { $count ->
    [one] faili moja katika folda yake inafanana na rekodi, na hakuna duru inayoitaja: { $names }
   *[other] faili { $count } katika folda yake zinafanana na rekodi, na hakuna duru inayozitaja: { $names }
}

## What check says of the other procedures

# The first line; { $level }: one of those that begin with level-, { $title }: the campaign's.
# As in English
check-verdict = { $level }: { $title }
# { $caveats }: irradiance-estimated and the like.
# As in English
check-verdict-with = { $level } ({ $caveats }): { $title }
# Labels of the lines below it, and what stands beside them.
check-next = hatua
check-so-far = hadi sasa
check-aim = lengo
check-name = kampeni
# The first line of several campaigns; { $levels }: "3 × conforms, 2 × cannot be read".
check-many = kampeni { $count }: { $levels }
check-unreadable = haisomeki
# Before what is to be done next in several campaigns; { $first }: the folder of the first of them.
check-campaigns = kampeni { $count }
check-campaigns-first = { $first } na nyingine { $others }
check-next-unreadable = rekebisha makosa yaliyoorodheshwa hapa chini
# Of campaigns for whose next steps there is no room.
check-next-other = tazama hapa chini
check-next-reports = andika ripoti: { $command }
# Header of a table.
check-folder = folda
# Headings over what is said of several campaigns.
check-many-next = Cha kufanya sasa
check-many-findings = Kinachozizuia kampeni kukidhi, na jinsi ya kukirekebisha
check-many-notes = Ya kutaja pamoja na namba
check-many-figures = Thamani nyingine
check-shown = Zinaonyeshwa kampeni { $shown } kati ya { $count }, kwanza zile zilizo mbali zaidi na kukidhi.
check-shown-unreadable = Zinaonyeshwa kampeni { $shown } kati ya { $count }: kwanza zisizosomeka ({ $unreadable }), kisha zile zilizo mbali zaidi na kukidhi.
check-shown-only-unreadable = Zinaonyeshwa kampeni { $shown } kati ya { $count }, zote kati ya { $unreadable } zisizosomeka.
# { $one }: a command, { $whole } and { $json }: options.
check-whole = Kampeni moja kwa ukamilifu: { $one }. Zote: { $whole }, au { $json }
check-rating = Ps(50) = { $rating }, kutoka { $used } kati ya { counted-intervals } katika { counted-days }
check-no-number = hakuna tathmini: { $used } kati ya { counted-intervals } vinaweza kutumika
# { $none }: "no rating: there is no interval"; { $power }: "55 ± 12 W (not 95 %)".
check-so-far-balance = { $none }; mizania ya joto inatoa { $power } kwa 700 W/m² na 50 K: ni elekezi, si tathmini ya kiwango
check-none-used = hakuna tathmini: { $intervals ->
    [0] hakuna kipindi
    [one] kipindi pekee kilichopo hakiwezi kutumika
   *[other] hakuna kipindi kati ya vipindi { $intervals } kinachoweza kutumika
}
check-not-valid = hakuna namba: maji yangepata joto zaidi ya mwanga wa jua unaoangukia jiko; vipindi zaidi havisaidii
# What to do next. { $command } stays as it is.
check-next-report = andika ripoti: { $command }
# { $remedy }: what to do before more is measured.
check-next-then = { $remedy }; kisha { $missing }
# In place of the remedy above, where a notice doubts place or time.
check-next-note = kwanza angalia maelezo kuhusu mahali, tarehe au saa, na urekebishe kilicho na kosa
# { $next }: what to do; irradiance is estimated, which more of the same does not mend.
check-next-still = { $next } (bado itakuwa elekezi bila kihisi cha mnururisho kinachoelekea jua)
# Headers of the tables of runs: there is little room.
check-run = duru
check-date = tarehe
check-readings = vipimo
check-intervals = vipindi
check-used = vilitumika
check-aside = kando
check-kind = aina
check-from = kuanzia
check-to = hadi
# In the last column of the table, behind a number of intervals: two words at most.
aside-water-below-window = maji baridi
aside-water-above-window = karibu kuchemka
aside-ambient-out-of-range = hewa
aside-irradiance-low = jua hafifu
aside-irradiance-high = jua kali
aside-irradiance-unsteady = jua lisilo thabiti
aside-wind-high = upepo
aside-outside-solar-window = saa
aside-reading-gap = mapengo
aside-excluded-by-tester = kuondolewa
aside-not-cloudless = anga
# Headings.
check-findings = Kasoro, na jinsi ya kuzirekebisha
check-notes = Ya kutaja pamoja na namba
check-set-aside = Vipindi vilivyowekwa kando, na kinachosaidia
check-notices = Maelezo
check-how-read = Jinsi rekodi zilivyosomwa
check-shared = inatoa { $keys }
check-shared-nothing = haitoi kitu: faili zilizo karibu zaidi zinataja funguo zilezile
# Below the table. { $run }: its name, { $shortest }, { $longest }: minutes.
check-hole = { $run }: hakuna kipindi kuanzia { $from } hadi { $to } tarehe { $date }: hakuna vipimo viwili vya maji huko vilivyopishana kwa dakika { $shortest } hadi { $longest }
check-not-normalised = { $run }: { counted-intervals } bila mnururisho, ambavyo hutimiza kila kikomo na havitumiki
# What helps where intervals are set aside: what the person beside the cooker can do.
helps-water-below-window = anza kwa maji yaliyo nyuzi chache juu ya mazingira, au yaache yapate joto kabla ya kuhesabiwa
helps-water-above-window = simamisha duru, au anza tena kwa maji baridi, maji yanapokaribia kuchemka
helps-ambient-out-of-range = chagua msimu mwingine au saa nyingine ya siku
helps-irradiance-low = subiri anga safi, na uweke kioo cha kihisi kikiwa safi
helps-irradiance-high = kagua ugezi wa kihisi, na uzuie mwanga ulioakisiwa usikifikie
helps-irradiance-unsteady = jaribu katika siku zisizo na mawingu yanayopita, na uweke kihisi kikiwa kimeelekezwa
# In place of the three above where a model of the clear sky gives irradiance, and no sensor.
helps-irradiance-of-model = kagua latitudo, longitudo na ukanda wa saa, ambazo jua linakadiriwa kwazo, na ujaribu karibu zaidi na adhuhuri ya jua
helps-wind-high = jaribu mahali penye kinga au katika siku tulivu zaidi
helps-outside-solar-window = pasha ndani ya dirisha, ambalo ni la wakati wa jua
helps-reading-gap = rekodi kila kipimo angalau mara moja katika kila kipindi
helps-excluded-by-tester = hakuna, ila kama uondoaji ulikuwa kosa
helps-not-cloudless = andika kwa kila kipimo kama anga lilikuwa bila mawingu; pima mnururisho mahali ambapo mawingu hupita
# Behind helps-outside-solar-window.
helps-by-clock = { $helps }; tarehe { $date } hilo lilikuwa { $from } hadi { $to } kwa saa
# Of several logs, { $what }: what is said of each of them.
check-of-logs = rekodi { $count }
check-figures = Namba nyingine hadi sasa
check-no-figures = Bado hakuna namba nyingine.
box-grade-one-day = hakuna: F1 iko juu ya { $limit } K m²/W (IS 13429), lakini ni ya siku moja, na nyingine inaweza kuwa chini zaidi
box-grade-not-flat = hakuna: mnururisho haukupimwa kwa kihisi kilicholala bapa, ambacho kikomo, { $limit } K m²/W, kinakihusu (IS 13429)
box-glass = Kioo ni { $area }, kama ilivyotajwa.
box-glass-not-stated = Eneo la kupokea mwanga, { $area }, limechukuliwa kuwa la kioo. Ikiwa lina viakisi ndani yake, F2 huwa ndogo mno: taja eneo la kioo.
box-beyond-reach-remedy = F1 ni ndogo mno, au kihisi kilisoma pungufu katika duru hiyo: hakikisha kwamba kilele tulivu kilifikiwa, viakisi vilifunikwa kwa namna ileile, na kihisi kililala bapa
boiling-gets-to = hakuna muda wa kuchemka: katika jua la jaribio maji hufika { $highest }, na huchemka kwa { $boiling }
boiling-may-not = hakuna muda wa kuchemka: ndani ya utovu wa uhakika wa namba, huenda maji yasifike { $boiling }, ambapo huchemka
boiling-remedy = jaribu katika jua kali zaidi, au boresha jiko
dish-runs-left-out = duru za maji zisizo na upandaji wa { $rise } juani usio na mapengo wala muda ulioondolewa, ambazo hazikutumika: { $runs }
dry-no-ambient = hewa haikusomwa ndani ya saa mbili za vipande thabiti
dry-no-ambient-remedy = soma hewa angalau kila mara ya pili
dry-may-get-hotter = kwenye kilele chake tulivu chombo kilikuwa bado kikipanda kwa { $rate } K/min: kwa kupanda kwake kwa mwanzo huenda kikaishia na joto la { $more } zaidi
dry-no-end = tofauti kwa kila W/m² haitolewi: ndani ya utovu wa uhakika wa mnururisho, masafa yake hayana mwisho
efficiency-peak-unsure = kilele hakikutolewa: hakipo bila mojawapo ya siku, au ndani ya utovu wa uhakika wa vifaa
efficiency-peak-unsure-remedy = jaribu kwa siku zaidi, kila moja kuanzia { $above } juu ya hewa hadi karibu na kuchemka
efficiency-too-much = maji yalipokea joto zaidi ya mwanga wa jua ulio kwenye eneo la kupokea mwanga, jambo lisilowezekana
efficiency-too-much-remedy = kagua eneo la kupokea mwanga, mzigo na vizio
tested-instruments-note-cooling = Utovu sanifu wa uhakika (k = 1); kwa daraja, vikomo vyake. Pale ambapo hakuna kati ya hivi kilichotajwa, daraja la tahadhari kubwa zaidi hukisiwa (mazoea ya kawaida).

## Comparison: figures beside the rating

section-beside = Namba kando ya tathmini
# A list of several campaigns for each figure: headers, and cells. Numbers are those of campaigns.
beside-head-value = thamani
beside-head-apart = tofauti na
beside-from-none = hakuna
# A cell: how many of those that it is compared with.
beside-from-so-many = { $apart } kati ya { $compared }
# { $reasons }: some of beside-not-compared-why, with ";" between them.
beside-not-compared-list = Hazikulinganishwa: { $reasons }.
# { $pairs }: some of beside-not-compared-with, with ";" between them.
# As in English
beside-not-compared-why = { $pairs } ({ $why })
# Numbers of campaigns.
beside-not-compared-with = { $one } na { $others }
beside-pairs = { $count ->
        [one] jozi { $count }
       *[other] jozi { $count }
    }
# { $numbers }: "2, 5–7".
beside-list-note = Kila ± ni kwa 95 %, isipokuwa palipoandikwa “{ beside-one-day }”. Kile ambacho kampeni hushiriki hufutana katika tofauti, kwa hiyo namba mbili ambazo masafa yake hufunikana kwa sehemu bado zinaweza kutofautiana. Namba ambazo hakuna mbili zilizolinganishwa zimo katika faili ya data.
beside-first-only = Za kila namba { $shown } za kwanza zimeonyeshwa, kati ya kampeni { $campaigns } kwa jumla; kila jozi imo katika faili ya data.
# A title where there is no rating.
beside-title = Namba za kampeni { $count } zilizolinganishwa
beside-title-none = Hakuna namba za kampeni hizi { $count } zinazoweza kulinganishwa
# { $name }: the campaign with which all others were to be compared.
beside-title-none-of = Hakuna namba ya { $name } inayoweza kulinganishwa na ya kampeni nyingine
beside-title-hotter = { $first } hupata joto zaidi ya { $second } chombo kikiwa kikavu
beside-title-not-told = Haiwezi kusemwa ipi hupata joto zaidi chombo kikiwa kikavu, { $first } au { $second }
beside-in-all = Tofauti { $apart } za namba kati ya { $compared } zimetofautishwa.
# Headers of a table. "First" and "second" are the campaigns of a pair, second − first.
beside-figure = namba
beside-difference = tofauti
beside-verdict = zimetofautishwa?
# After the difference of two percentages.
beside-points = pointi za asilimia
# In that column, and on a terminal after the difference.
beside-told-apart = zimetofautishwa
beside-not-told-apart = hazikutofautishwa
beside-apart-when-tested = tofauti zilipojaribiwa
# { $pairs } is more than one.
beside-by-chance = hazikutofautishwa kati ya jozi { $pairs }
# { $why }: one of figure-unlike-….
beside-not-compared = hazikulinganishwa: { $why }
# { $verdict }: one of those above; { $marks }: one or several of the next three.
# As in English
beside-marked = { $verdict } ({ $marks })
beside-one-day = si 95 %
beside-indicative = elekezi
beside-vessels-not-stated = vyombo havikutajwa
figure-unlike-vessels = vyombo vingine
figure-unlike-plane = mnururisho katika bapa jingine
figure-unlike-plane-not-stated = bapa la mnururisho halikutajwa
figure-unlike-load-or-sun = mzigo, jua au hewa nyingine
figure-unlike-load = mzigo mwingine
figure-unlike-span = masafa mengine ya halijoto ya maji
figure-unlike-vessel-heat = joto la vyombo huhesabiwa katika moja tu
figure-unlike-no-budget = haijulikani ± yake imeundwa na nini
beside-note = Kila ± ni kwa 95 %, isipokuwa palipoandikwa “{ beside-one-day }”. Kile ambacho zote mbili zinashiriki hufutana katika tofauti, kwa hiyo namba mbili ambazo masafa yake hufunikana kwa sehemu bado zinaweza kutofautiana.
# First sentences of the report, for two cookers without a rating. { $difference } and
# { $interval } in K m²/W; { $share }: the difference as a part of the figure of the first, %.
beside-hotter = Chombo kikavu cha { $second } hupata joto zaidi kwa kila W/m² kuliko kile cha { $first }: { $difference } K m²/W zaidi ({ $interval }), { $share } %: tofauti halisi.
beside-cooler = Chombo kikavu cha { $second } hupata joto pungufu kwa kila W/m² kuliko kile cha { $first }: { $difference } K m²/W pungufu ({ $interval }), { $share } %: tofauti halisi.
beside-hotter-one-day = Chombo kikavu cha { $second } kilipata joto zaidi kwa kila W/m² kuliko kile cha { $first } vilipojaribiwa: { $difference } K m²/W zaidi ({ $interval }), { $share } %. Havikujaribiwa kwa siku kadhaa kila kimoja, kwa hiyo huenda siku pekee zinaieleza tofauti hiyo: jaribu vyote viwili tena katika siku nyingine.
beside-cooler-one-day = Chombo kikavu cha { $second } kilipata joto pungufu kwa kila W/m² kuliko kile cha { $first } vilipojaribiwa: { $difference } K m²/W pungufu ({ $interval }), { $share } %. Havikujaribiwa kwa siku kadhaa kila kimoja, kwa hiyo huenda siku pekee zinaieleza tofauti hiyo: jaribu vyote viwili tena katika siku nyingine.
beside-hotter-by-chance = Haijulikani ni chombo kikavu kipi hupata joto zaidi kwa kila W/m², kile cha { $second } au cha { $first }: hutofautiana kwa { $difference } K m²/W ({ $interval }), { $share } %, lakini kati ya jozi { $pairs } moja inaweza kutofautiana hivyo kwa bahati.
beside-hotter-not-told = Haiwezi kusemwa ni chombo kikavu kipi hupata joto zaidi kwa kila W/m², kile cha { $second } au cha { $first }: { $second } ina { $difference } K m²/W zaidi, { $share } %, na chochote kuanzia { $interval } kinalingana na data.
beside-cooler-not-told = Haiwezi kusemwa ni chombo kikavu kipi hupata joto zaidi kwa kila W/m², kile cha { $second } au cha { $first }: { $second } ina { $difference } K m²/W pungufu, { $share } %, na chochote kuanzia { $interval } kinalingana na data.
beside-hotter-not-compared = Kiasi ambacho vyombo vikavu vya { $second } na { $first } hupata joto hakikulinganishwa: { $why }.
beside-nothing-shared = { $second } na { $first } hazina namba yoyote ya pamoja.
beside-others = Kati ya namba nyingine za { $second } na { $first }, { $compared } zinaweza kulinganishwa, na { $apart } kati ya hizo zimetofautishwa.
comparison-dry-title = Vyombo vikavu
comparison-dry-note = Kilele tulivu: pale chombo kilipoacha kuzidi kupata joto. K m²/W: chombo juu ya hewa kwa kila W/m², ± kwa 95 %.
comparison-dry-caption = Halijoto ya chombo kikavu kwa °C dhidi ya dakika tangu mwanzo wa duru; kwa nyeusi, ile ya kampeni iliyotajwa juu ya paneli; mstari mnene: kilele tulivu. Havikuwa chini ya jua moja: linganisha K m²/W, si digrii.
# Read out to those who do not see the figure. { $runs }: comparison-dry-one of each, with ";"
# between them.
# Read out to those who do not see the panel. { $highest }: degrees.
comparison-dry-alt = Halijoto ya chombo kikavu dhidi ya wakati, ya juu kabisa { $highest }.
comparison-practice-no-rating = JCGM 100:2008 kwa tofauti
beside-note-difference = Utovu wa uhakika wa tofauti ya namba kando ya tathmini una mtawanyiko na siku za kampeni zote mbili, kila moja kwa digrii zake za uhuru, na kile ambacho vifaa vyake havishiriki. Athari ya siku moja kwa zote mbili haiondolewi, jambo ambalo huukuza. Tathmini ina ulinganisho wake; vivyo hivyo pato na upotevu pale zote mbili zina tathmini na mizania ya joto.
beside-note-alike = Namba hulinganishwa pale faili za kampeni zinapotaja hali zinazofanana: kwa kila W/m², mnururisho katika bapa moja; za vyombo vikavu au vinavyopoa, vyombo vya idadi ileile vyenye uwezo uleule wa kuhifadhi joto na eneo lilelile ndani ya 2 %; muda wa kuchemka, ufanisi na kilele cha eksergia, mnururisho ndani ya 2 % na halijoto ya mazingira ndani ya 2 K; muda wa kuchemka, mzigo ndani ya 2 % na kiwango cha kuchemka ndani ya 2 K; ufanisi, masafa ya halijoto ya maji ndani ya 5 K kwenye ncha zake na 2 K kwa wastani; F2, mzigo kwa kila m² ndani ya 10 %; muda bainifu, mzigo ndani ya 2 %. Vikomo hivi ni mazoea ya kawaida. “Vyombo havikutajwa”: haijulikani kama vilifanana.
beside-note-pairs = “Zimetofautishwa”: p ya tofauti iko chini ya 0.05, ikiwa imesahihishwa kwa mbinu ya Holm kwa jozi ambamo namba hulinganishwa, kati ya { $pairs } kwa jumla; haikusahihishwa kwa idadi ya namba. Tofauti ya siku mojamoja haiitwi kamwe iliyotofautishwa.

## Slips that show

dry-sun-down = wakati wa kilele tulivu jua lilikuwa chini ya upeo wa macho, kwa hiyo saa, ukanda wa saa au mahali si sahihi
dry-sun-down-remedy = sahihisha time_zone, latitude na longitude chini ya [site], au saa za rekodi
dry-colder-than-air = chombo kinaonyesha { $below } chini ya hewa baridi zaidi ya duru: kimoja kati ya viwili kiko katika kizio tofauti na kilichotajwa
dry-very-hot = chombo kinaonyesha { $highest }, joto zaidi ya lile ambalo majiko yaliyotengenezwa nyumbani hufikia (mazoea ya kawaida, bila chanzo kilichochapishwa): je, kipimajoto ni cha °F?
dry-unit-remedy = taja vessel_temperature na ambient_temperature chini ya [units], "°F" au "°C", kama kila kipimajoto kinavyoonyesha
dish-losses-differ = upotevu kwa kupoa, { $cooling } W/K, na ule wa mizania ya joto, { $balance } W/K, hutofautiana zaidi ya ± zake: jua lilifikia mzigo uliokuwa ukipoa, au upepo ulikuwa mwingine
dish-losses-differ-remedy = tia kivuli uwazi wote wa jiko na sufuria inapopoa, na andika upepo katika zote mbili
box-plane-turned = vipimo vya kihisi kilicholala bapa viligeuzwa kuelekea jua, kadirio; F1 na F2 hufafanuliwa kwa vipimo visivyogeuzwa
box-plane-turned-remedy = tengeneza kampeni ya pili kwa rekodi zilezile bila estimate, kwa plane = "horizontal"
notice-long-run-other = { $log }: vipimo vinachukua siku { $days }, duru ni jaribio moja katika siku moja; kagua tarehe, au weka start na end
finding-no-water = hakuna duru ya kampeni hii inayopasha maji, kwa hiyo hakuna cha kutathmini
finding-no-water-remedy = pasha mzigo wa maji uliopimwa kwa mizani ili kupata tathmini; namba nyingine zinajitegemea
instrument-assumed = bila kutajwa; imekisiwa kuwa { $class }: { $basis }

## A test day while it runs, on the terminal

# The first line: how it stands. It is read in the sun, so it is short.
watch-waiting = Inasubiriwa safumlalo ya kwanza ya leo
watch-silent = Hakuna safumlalo kwa { $time }
watch-over = Dirisha la jua la leo limefungwa
# { $kind }: what is tested, a message that begins with kind-.
watch-other-run = Inapimwa: { $kind }
watch-begins = Kipindi kinaanza
watch-no-run = Safumlalo zinakuja, lakini si za duru yoyote
# { $passed }, { $length }: minutes.
watch-good = Vizuri hadi sasa: dakika { $passed } kati ya { $length } za kipindi hiki
# { $faults }: one of the next two or several, or a message that begins with reason-.
watch-at-risk = Hatarini: { $faults }
watch-spoiled = Kipindi hiki kimeharibika: { $faults }
# { $what }: what is limited, a message that begins with limit-; then numbers with their unit.
watch-at-least = { $what } { $found }, angalau { $limit }
watch-at-most = { $what } { $found }, isizidi { $limit }
# Behind check-next: what to do.
watch-next-start = elekeza jiko, na washa kirekodi
watch-next-logger = angalia kirekodi: umeme, waya, kumbukumbu
watch-next-tomorrow = maliza kwa leo
watch-next-aim = elekeza sasa
watch-next-no-run = hakikisha maji yanapanda joto, na angalia start na end katika campaign.toml
watch-next-keep = acha kama lilivyo
watch-next-enough = inatosha: unaweza kumaliza baada ya kipindi hiki
watch-next-cool-water = andaa maji baridi: kipindi kijacho kitakuwa na moto mno
# { $remedy }: a message that begins with helps-.
watch-next-spoiled = { $remedy }; kipindi kijacho kinaanza { $clock }
# Labels, and what stands beside them.
watch-vessel = chombo
watch-above = { $difference } juu ya hewa (Td)
watch-air = hewa { $air }
watch-irradiance = { $irradiance } W/m²
# { $turned }: as it counts, { $irradiance }: as the sensor that lies flat has it.
watch-irradiance-turned = { $turned } W/m² kuelekea jua, ndiyo inayotumika (kihisi kilicholala bapa: { $irradiance })
watch-wind = upepo { $wind }
watch-spoils = kinaharibiwa na
watch-spoils-irradiance = mnururisho chini ya { $low } au juu ya { $high } W/m²
watch-spoils-wind = wastani wa upepo juu ya { $most } (hadi sasa { $mean })
watch-spoils-water = maji juu ya { $most }
watch-today = leo
# In place of today, where the newest row is of another day; what stands beside it.
watch-last-day = siku ya mwisho
# { $gained }: the next one.
watch-gained-on = { $date }: { $gained }
# { $all }: intervals of today, used or not.
watch-gained = { $all ->
    [one] vilivyotumika { $used } kati ya kipindi { $all }
   *[other] vilivyotumika { $used } kati ya vipindi { $all }
}
watch-missing = bado vinahitajika: { $missing }
watch-missing-nothing = tayari vinatosha
watch-aim = kuelekeza tena
watch-aim-not-stated = hakuna saa, kwa kuwa acceptance_half_angle_deg haijatajwa katika campaign.toml. Mazoea ya kawaida, hakuna chanzo kilichochapishwa: kiakisi kisicho na kina takriban kila dakika 45, dishi lenye kitovu kidogo kila dakika 10 hadi 15
watch-aim-always = muda wote, kwa mota
watch-aim-due = sasa ({ $clock })
watch-aim-done = si tena leo
watch-at-in = saa { $clock }, baada ya { $time }
watch-opens = linafunguka saa { $clock }, baada ya { $time }
watch-closes = linafungwa saa { $clock }, baada ya { $time }
watch-closed = lilifungwa saa { $clock }
# { $said }: what check says; { $level }: one of those that begin with level-.
watch-so-far = { $level }: { $said } (safumlalo hadi { $clock })
watch-so-far-no-row = { $level }: { $said }
watch-time = saa
watch-time-text = { $now }; safumlalo ya mwisho { $row }
watch-seconds = { $seconds } s
# From two days on.
watch-days = siku { $days }
# What is not as it should be. { $what }: an error, in English.
watch-log-missing = { $log } haipo bado
watch-log-gone = { $log } haipo tena; inaonyeshwa iliyokuwa nayo kabla
watch-not-read = haiwezi kutumika sasa: { $what }
watch-campaign-not-read = faili ya kampeni haiwezi kutumika sasa, ya mwisho iliyo nzuri inatumika: { $what }
watch-line-not-ended = { $log }: mstari wake wa mwisho haujakamilika, na bado hautumiki
watch-begun-anew = { $log } imeanzishwa upya: kinachotumika ni kilichomo sasa tu
watch-none-later = mistari imekuja bila kipimo cha baada ya { $clock }: je, saa ya kirekodi imerudishwa nyuma?
watch-clock-jumped = saa ya safumlalo imeruka kwa { $time }
watch-clocks-apart = saa ya safumlalo na ya kompyuta hii zinatofautiana kwa { $time }
watch-caution = Usiangalie kamwe ndani ya kitovu cha mwanga wala jua. Metali yenye moto na mvuke huunguza: glavu. Geuza jiko mbali na jua kabla ya kuingiza mkono. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.
watch-caution-dry = Chombo kikavu hupata joto la juu sana kuliko 100 °C na huunguza kwa kuguswa. Usimwage kamwe maji ndani yake kikiwa na moto. Usiangalie kamwe ndani ya kitovu cha mwanga wala jua; geuza jiko mbali nalo kabla ya kuingiza mkono. Kanuni za mahali ulipo na utendaji wenye leseni hutangulia.
