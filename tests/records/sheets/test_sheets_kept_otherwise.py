"""Rows per egg with keys and days, logs in words, forms, lying tables and diaries: each batch as a person reads it.

A batch is told as set, clear, dead, pipped, removed, hatched, unaccounted for.
"""

import pytest
from test_sheets_neighbours import read

#: Of every text: the batches in it.
PER_EGG = {
    "a key in one line, French": ("""
Clef : + vivant   c = clair   m = mort   b = bêché, mort   E = éclos   - = sorti de la couveuse

oeuf n°;couvée;mis le;mirage J8;mirage J16;éclosion J28
1;A;02/03/2024;+;+;E
2;A;02/03/2024;c;-;-
3;A;02/03/2024;+;m;-
4;A;02/03/2024;+;+;b
5;A;02/03/2024;+;+;E""", [(5, 1, 1, 1, 0, 2, 0)]),
    "a key in one line, English": ("""
Key: O = alive, C = clear, Q = quit, H = hatched, D = dead in shell

Egg,Sitting,Set,Day 7,Day 14,Day 21
1,1,2 March 2024,O,O,H
2,1,2 March 2024,C,,
3,1,2 March 2024,O,Q,
4,1,2 March 2024,O,O,D
5,2,9 March 2024,O,O,H""", [(4, 1, 2, 0, 0, 1, 0), (1, 0, 0, 0, 0, 1, 0)]),
    "the day on which each came out": ("""
Clutch,Egg,Set,Fate,When
1,1,4 May 2024,hatched,1 June 2024
1,2,4 May 2024,clear,12 May 2024
1,3,4 May 2024,quit,20 May 2024
1,4,4 May 2024,dead in shell,2 June 2024
1,5,4 May 2024,cracked,6 May 2024
2,1,11 May 2024,hatched,8 June 2024
2,2,11 May 2024,clear,19 May 2024""", [(5, 1, 2, 0, 1, 1, 0), (2, 1, 0, 0, 0, 1, 0)]),
    "the day, German": ("""
Ei;Brut;eingelegt am;Ergebnis;am
1;I;04.05.2024;Küken;25.05.2024
2;I;04.05.2024;unbefruchtet;11.05.2024
3;I;04.05.2024;abgestorben;11.05.2024
4;I;04.05.2024;tot;26.05.2024
5;I;04.05.2024;Küken;25.05.2024""", [(5, 1, 2, 0, 0, 2, 0)]),
    "batches by the egg's code, Swedish": ("""
ägg;maskin;inlagd;lysning dag 8;lysning dag 16;kläckning
A1;stora;2024-03-02;bra;bra;ut
A2;stora;2024-03-02;obefruktad;;
A3;stora;2024-03-02;bra;död;
B1;stora;2024-04-06;bra;bra;ut
B2;stora;2024-04-06;bra;bra;död i ägget
B3;stora;2024-04-06;sprucken, bort;;""", [(3, 1, 1, 0, 0, 1, 0), (3, 0, 1, 0, 1, 1, 0)]),
    "looks and the end, Italian": ("""
Registro uova - oche 2025

Uovo,Covata,Messo il,Peso,Speratura 9 gg,Speratura 18 gg,Schiusa
1,prima,05/03/2025,160,ok,ok,nato
2,prima,05/03/2025,155,chiaro,,
3,prima,05/03/2025,149,ok,morto,
4,prima,05/03/2025,162,ok,ok,morto nel guscio
5,seconda,20/03/2025,158,ok,ok,nato
6,seconda,20/03/2025,151,rotto,,
7,seconda,20/03/2025,150,ok,ok,"beccato, morto" """, [(4, 1, 2, 0, 0, 1, 0), (3, 0, 0, 1, 1, 1, 0)]),
}  # fmt: skip
LOGS = {
    "counts in words beside the eggs left, Czech": ("""
Datum;Násada;Co;Výsledek;Zbývá
2025-03-01;L1;nasazeno;vloženo 30 vajec;30
2025-03-08;L1;prosvícení 1;neoplozené 4, odumřelé 1;25
2025-03-19;L1;prosvícení 2;odumřelé 2;23
2025-03-22;L1;líhnutí;vylíhlo se 19 kuřat;
2025-03-23;L1;úklid;naklubané a mrtvé 1, zadušené ve skořápce 3;""", [(30, 4, 6, 1, 0, 19, 0)]),
    "a word explained in a row": ("""
Date,Batch,Task,Eggs in,Clear,Quit,Chicks,Notes
2024-08-03,A,SET,60,,,,
2024-08-10,A,CANDLE,,9,2,,
2024-08-24,A,HATCH,,,,44,
2024-08-25,A,CLEAR OUT,,,5,,quit = full term
2024-08-31,B,SET,48,,,,
2024-09-07,B,CANDLE,,6,1,,
2024-09-21,B,HATCH,,,,39,
2024-09-22,B,CLEAR OUT,,,2,,quit = full term""", [(60, 9, 7, 0, 0, 44, 0), (48, 6, 3, 0, 0, 39, 0)]),
    "counts in words, Danish": ("""
Dato,Hold,Hvad,Resultat,Tilbage
01-03-2025,H1,lagt i,30 æg,30
08-03-2025,H1,lysning 1,"ubefrugtede 4, døde 1",25
19-03-2025,H1,lysning 2,døde 2,23
22-03-2025,H1,klækning,19 kyllinger,
23-03-2025,H1,oprydning,"pippede og døde 1, døde i skallen 3",
29-03-2025,H2,lagt i,24 æg,24
05-04-2025,H2,lysning 1,"ubefrugtede 2, døde 0",22
16-04-2025,H2,lysning 2,alle lever,22
19-04-2025,H2,klækning,20 kyllinger,
20-04-2025,H2,oprydning,"pippede og døde 0, døde i skallen 2",""", [(30, 4, 6, 1, 0, 19, 0), (24, 2, 2, 0, 0, 20, 0)]),
}  # fmt: skip
FORMS = {
    "looks side by side, Czech": ("""
LÍSTEK LÍHNUTÍ Č. 4

Druh:;krůta;Líheň:;skříň
Datum nasazení:;16.03.2024;Počet vajec:;30
Prosvícení I (10. den);;Prosvícení II (25. den);
čirá:;2;odumřelá:;3
odumřelá:;1;do dolíhně:;24

Vylíhlo se:;21;Naklubaná, mrtvá:;1
Nevylíhlá:;2;;""", [(30, 2, 6, 1, 0, 21, 0)]),
    "a title of the sheet, and numbered cards, German": ("""
Wachteln im Keller 2025

Zettel 1
Eingelegt am:;01.02.2025
Eier:;60 Stk
Klar (Tag 8):;10
Abgestorben (Tag 8):;keine
Geschlüpft:;46
Im Ei tot:;4

Zettel 2
Eingelegt am:;22.02.2025
Eier:;50 Stk
Klar (Tag 8):;6
Abgestorben (Tag 8):;2
Geschlüpft:;40 (1 schwach)
Im Ei tot:;2""", [(60, 10, 4, 0, 0, 46, 0), (50, 6, 4, 0, 0, 40, 0)]),
    "look and class in one label, French": ("""
Couvée 1
Oeufs mis,30
Date,2025-03-01
Mirage J7 : clairs,4
Mirage J7 : morts,1
Mirage J18 : morts,2
Poussins,20
Morts en coquille,3

Couvée 2
Oeufs mis,24
Date,2025-04-05
Mirage J7 : clairs,2
Mirage J7 : morts,0
Mirage J18 : morts,aucun
Poussins,21
Morts en coquille,1""", [(30, 4, 6, 0, 0, 20, 0), (24, 2, 1, 0, 0, 21, 0)]),
    "a table of looks within, German": ("""
Brutblatt 1;;;;
Tiere;Gänse;;;
Einlage;02.03.2024;;;
Stück;18;;;
Schieren;Datum;klar;abgestorben;faul/zerbrochen
1.;10.03.2024;3;0;0
2.;17.03.2024;;1;1
3.;28.03.2024;;1;0
Geschlüpft;10;am;01.04.2024;
Steckengeblieben;2;;;

Brutblatt 2;;;;
Tiere;Enten;;;
Einlage;16.03.2024;;;
Stück;30;;;
Schieren;Datum;klar;abgestorben;faul/zerbrochen
1.;24.03.2024;4;1;0
2.;31.03.2024;;2;0
3.;10.04.2024;;0;0
Geschlüpft;23;am;13.04.2024;
Steckengeblieben;0;;;""", [(18, 3, 4, 0, 1, 10, 0), (30, 4, 3, 0, 0, 23, 0)]),
    "numbered cards, Spanish": ("""
FICHA DE INCUBACIÓN
Ficha 12
Especie:,pato
Fecha de carga:,03/03/2025
Número de huevos:,40 u.
Infértiles (día 10):,6
Muertos (día 10):,1
Muertos (día 24):,2
Nacidos:,28
Picados sin nacer:,1
Muertos en cáscara:,2

Ficha 13
Especie:,oca
Fecha de carga:,10/03/2025
Número de huevos:,16 u.
Infértiles (día 10):,3
Muertos (día 10):,ninguno
Muertos (día 24):,1
Nacidos:,10
Picados sin nacer:,-
Muertos en cáscara:,2""", [(40, 6, 5, 1, 0, 28, 0), (16, 3, 3, 0, 0, 10, 0)]),
    "a table of looks within, Hungarian": ("""
Keltetőlap 1;;;;
Faj;pulyka;;;
Berakva;2025.03.01.;;;
Tojás;30;;;
Lámpázás;Dátum;Terméketlen;Elhalt;Repedt
1.;2025.03.09.;4;1;0
2.;2025.03.20.;;2;1
Kikelt;20;;;
Befulladt;2;;;

Keltetőlap 2;;;;
Faj;kacsa;;;
Berakva;2025.04.01.;;;
Tojás;24;;;
Lámpázás;Dátum;Terméketlen;Elhalt;Repedt
1.;2025.04.09.;2;0;0
2.;2025.04.20.;;1;0
Kikelt;20;;;
Befulladt;1;;;""", [(30, 4, 5, 0, 1, 20, 0), (24, 2, 2, 0, 0, 20, 0)]),
}  # fmt: skip
LYING = {
    "groups before the labels, Spanish": ("""
Ocas 2023,,,,
,,1ª tanda,2ª tanda,3ª tanda
Puesta,fecha,04/03/2023,25/03/2023,15/04/2023
,huevos,30,36,28
Día 10,claros,2,6,5
,muertos,1,2,0
Día 25,muertos,0,0,2
Nacimiento,nacidos,26,25,19
,picados y muertos,ninguno,2,ninguno
,muertos en cáscara,1,1,0""", [(30, 2, 2, 0, 0, 26, 0), (36, 6, 3, 2, 0, 25, 0), (28, 5, 2, 0, 0, 19, 2)]),
    "the year's sum beside": ("""
,Hatch 1,Hatch 2,Hatch 3,All year
Set,13/01/2024,10/02/2024,09/03/2024,
Eggs,42,48,56,146
Clear d7,4,4,3,11
Dead d7,3,2,4,9
Dead d18,1,0,2,3
Chicks,33,37,41,111
Dead in shell,1,5,6,12""", [(42, 4, 5, 0, 0, 33, 0), (48, 4, 7, 0, 0, 37, 0), (56, 3, 12, 0, 0, 41, 0)]),
    "groups before the labels, Dutch": ("""
Kwartels 2025,,,,
,,broedsel 1,broedsel 2,totaal
Inleg,datum,01-03-2025,05-04-2025,
,eieren,60,72,132
Dag 8,schier,8,10,18
,dood,2,3,5
Uitkomst,kuikens,46,54,100
,dood in de dop,4,5,9""", [(60, 8, 6, 0, 0, 46, 0), (72, 10, 8, 0, 0, 54, 0)]),
}  # fmt: skip
DIARIES = {
    "English": ("""
10 Mar 2024,Put two dozen Marans eggs in the cabinet.
18 Mar 2024,Candled. Four clear and one blood ring.
28 Mar 2024,"Marans: 1 dead, the other 18 flat to hatch."
31 Mar 2024,15 Marans chicks by evening.
1 Apr 2024,Opened the rest - three dead in shell.
14 Apr 2024,Half a dozen goose eggs went under the broody.
24 Apr 2024,"Geese: 1 clear, taken out."
13 May 2024,Four goslings! The other egg never pipped.""", [(24, 4, 5, 0, 0, 15, 0), (6, 1, 1, 0, 0, 4, 0)]),
    "German": ("""
Tagebuch Hühnerhof 2024
3.3.2024;24 Maranseier eingelegt.
10.3.2024;Marans geschiert: 3 klar, eins abgestorben.
17.3.2024;18 Gänseeier in den Flächenbrüter gelegt.
24.3.2024;17 Küken von den Marans. Drei tot im Ei.
27.3.2024;Gänse geschiert, 4 unbefruchtet, ein Ei mit Riss entsorgt.
16.4.2024;11 Gössel! 2 tot im Ei.""", [(24, 3, 4, 0, 0, 17, 0), (18, 4, 2, 0, 1, 11, 0)]),
    "Dutch": ("""
2-3-2025;30 Barnevelder eieren ingelegd in de grote machine.
9-3-2025;Barnevelders geschouwd: 4 onbevrucht, 1 afgestorven.
20-3-2025;Barnevelders: 2 dood, 23 naar de uitkomstbak.
23-3-2025;20 Barnevelder kuikens. Drie dood in de dop.
30-3-2025;Een dozijn eendeneieren onder de klokhen gelegd.
8-4-2025;Eenden geschouwd, 2 schier.
27-4-2025;8 eendjes uit. Twee aangepikt maar dood.""", [(30, 4, 6, 0, 0, 20, 0), (12, 2, 0, 2, 0, 8, 0)]),
    "lines under the name of each batch, and what is said of the rest": ("""
Hatch 1
2 Mar 2025,24 Marans eggs in the big machine
9 Mar 2025,"d7: 3 clear, one with a blood ring"
23 Mar 2025,"17 chicks. Three eggs were left, dead in shell"

Hatch 2
5 Apr 2025,12 Aylesbury eggs in the small one
15 Apr 2025,d10: 2 clear and 1 dead
3 May 2025,"7 ducklings, the rest dead in shell" """, [(24, 3, 4, 0, 0, 17, 0), (12, 2, 3, 0, 0, 7, 0)]),
    "a column of batches, Polish": ("""
Data;Lęg;Wpis
01.03.2025;kury;Włożyłem 40 jaj.
08.03.2025;kury;Świetlenie: 5 niezapłodnionych, 1 zamarłe.
15.03.2025;gęsi;Jeszcze 16 jaj gęsich.
22.03.2025;kury;Wykluło się 30, zamarłe w skorupie 4.
25.03.2025;gęsi;Świetlenie: 3 niezapłodnione.
15.04.2025;gęsi;"Wykluło się 11, 2 zamarłe w skorupie." """, [(40, 5, 5, 0, 0, 30, 0), (16, 3, 2, 0, 0, 11, 0)]),
    "French": ("""
3 mars 2025;Mis deux douzaines d'œufs de Marans en couveuse.
10 mars 2025;Miré les Marans : 4 clairs, 1 avec cercle de sang.
21 mars 2025;Marans : encore 1 mort. Les 18 autres à l'éclosoir.
24 mars 2025;16 poussins Marans ! Les deux derniers œufs : morts en coquille.
30 mars 2025;10 œufs d'oie sous la couveuse naturelle.
9 avril 2025;Oies mirées, 2 clairs.
29 avril 2025;7 oisons. Un œuf bêché mais mort.""", [(24, 4, 4, 0, 0, 16, 0), (10, 2, 0, 1, 0, 7, 0)]),
    "Swedish": ("""
2025-03-02;Lade in 30 hedemoraägg i maskinen.
2025-03-09;Lyste Hedemora: 4 obefruktade, 1 död.
2025-03-20;Hedemora: 2 döda, 23 flyttade till kläckaren.
2025-03-23;20 kycklingar, 3 döda i ägget.
2025-04-06;12 ankägg i maskinen.
2025-04-14;Ankorna lysta, 2 obefruktade.
2025-05-04;9 ankungar, en död i ägget.""", [(30, 4, 6, 0, 0, 20, 0), (12, 2, 1, 0, 0, 9, 0)]),
    "Italian": ("""
2 marzo 2025;Messe 30 uova di Livornese nell'incubatrice.
9 marzo 2025;Speratura Livornese: 5 chiare, 1 morto.
20 marzo 2025;Livornese: 1 morto, 23 in schiusa.
23 marzo 2025;Nati 20 pulcini. Tre morti nel guscio.
30 marzo 2025;Una dozzina di uova d'anatra sotto la chioccia.
9 aprile 2025;Anatre: 3 chiare.
27 aprile 2025;8 anatroccoli, uno morto nel guscio.""", [(30, 5, 5, 0, 0, 20, 0), (12, 3, 1, 0, 0, 8, 0)]),
}  # fmt: skip


def check(folder, text, batches):
    season, found = read(folder, text)
    assert found == batches and len(season.questions) <= 1


@pytest.mark.parametrize("text, batches", PER_EGG.values(), ids=PER_EGG)
def test_a_row_per_egg(text, batches, tmp_path):
    check(tmp_path, text, batches)


@pytest.mark.parametrize("text, batches", LOGS.values(), ids=LOGS)
def test_a_row_per_look(text, batches, tmp_path):
    check(tmp_path, text, batches)


@pytest.mark.parametrize("text, batches", FORMS.values(), ids=FORMS)
def test_a_form_per_batch(text, batches, tmp_path):
    check(tmp_path, text, batches)


@pytest.mark.parametrize("text, batches", LYING.values(), ids=LYING)
def test_batches_in_columns(text, batches, tmp_path):
    check(tmp_path, text, batches)


@pytest.mark.parametrize("text, batches", DIARIES.values(), ids=DIARIES)
def test_a_diary(text, batches, tmp_path):
    check(tmp_path, text, batches)


def test_an_egg_is_never_counted_twice_by_a_line_of_the_hatch_before_the_first_chick(tmp_path):
    season, _ = read(tmp_path, DIARIES["English"][0])
    looks = season.looks[season.looks["name"] != "hatch"].groupby("batch", sort=False)["dead"].sum()
    assert looks.iloc[0] == 2


def test_the_day_of_each_egg_dates_the_looks(tmp_path):
    season, _ = read(tmp_path, PER_EGG["the day on which each came out"][0])
    first = season.looks[season.looks["batch"] == "1"]
    assert [day.strftime("%d %b") for day in first["looked_at"]][:3] == ["06 May", "12 May", "20 May"]
