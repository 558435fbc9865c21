"""Small sheets of one kind each, laid out as keepers do; every batch is what a careful person reads, or it is asked.

A batch is told as set, clear, dead, pipped, removed, hatched, unaccounted for.
"""

import pytest
from sheet_files import write_csv

import hatchkit as hk
from hatchkit.losses.windows import left_out as left_out_of
from hatchkit.records.sheets.rows import counts_eggs

FATES = (
    {"clear", "infertile"}, {"early_dead", "mid_dead", "late_dead", "dead", "dead_in_shell"}, {"pipped_dead"},
    {"removed"}, {"hatched", "culled"}, {"unaccounted"},
)  # fmt: skip


def read(folder, text):
    season = hk.load_season(write_csv(folder, text.strip().split("\n")))
    found = []
    for batch in season.batches.to_dict("records"):
        mine = season.fates[season.fates["batch"] == batch["batch"]]
        counts = [int(mine.loc[mine["fate"].isin(fates), "eggs"].sum()) for fates in FATES]
        found.append((int(batch["eggs_set"]), *counts))
    return season, found


PER_EGG = {
    "what happened": """
Sitting,Egg,Set on,What happened
1,1,12 Mar 2024,dead in shell
1,2,12 Mar 2024,hatched
1,3,12 Mar 2024,clear
1,4,12 Mar 2024,"pipped, died"
1,5,12 Mar 2024,hatched""",
    "comments": """
Hatch,Egg no,Date set,Comments
1,1,12 Mar 2024,died in shell
1,2,12 Mar 2024,hatched fine
1,3,12 Mar 2024,infertile
1,4,12 Mar 2024,pipped but died
1,5,12 Mar 2024,hatched""",
    "a heading of its own": """
Batch,Egg,Set,In the end
1,1,12 Mar 2024,dead in shell
1,2,12 Mar 2024,chick
1,3,12 Mar 2024,clear
1,4,12 Mar 2024,pipped and died
1,5,12 Mar 2024,chick""",
    "looks, then the young": """
Batch,Egg #,Set,Day 8,Day 15,Hatch
1,1,3/12/2024,ok,ok,DIS
1,2,3/12/2024,ok,ok,keet
1,3,3/12/2024,clear,,
1,4,3/12/2024,ok,ok,"pipped, died"
1,5,3/12/2024,ok,ok,keet""",
    "looks, then ducklings": """
Lot,Egg,Set,1st candle,2nd candle,Came out
1,1,3/12/2024,ok,ok,dead in shell
1,2,3/12/2024,ok,ok,duckling
1,3,3/12/2024,clear,,
1,4,3/12/2024,ok,ok,pipped dead
1,5,3/12/2024,ok,ok,duckling""",
    "in German": """
Brut;Ei;eingelegt;Was daraus wurde
1;1;12.03.2024;im Ei abgestorben
1;2;12.03.2024;geschlüpft
1;3;12.03.2024;klar
1;4;12.03.2024;angepickt, tot
1;5;12.03.2024;geschlüpft""",
    "young in German": """
Brut;Ei;eingelegt;Tag 7;Tag 14;Schlupf
1;1;12.03.2024;ok;ok;steckengeblieben
1;2;12.03.2024;ok;ok;Küken
1;3;12.03.2024;klar;;
1;4;12.03.2024;ok;ok;angepickt, tot
1;5;12.03.2024;ok;ok;Küken""",
}


PER_EGG["yes and no"] = """
Egg,Hen,Set,Fertile?,Hatched?,Notes
1,Dot,13/04/2025,y,n,never pipped
2,Dot,13/04/2025,y,y,
3,Fern,13/04/2025,n,,
4,Fern,13/04/2025,y,n,pipped but died
5,Dot,13/04/2025,y,y,"""


@pytest.mark.parametrize("text", PER_EGG.values(), ids=PER_EGG)
def test_the_end_of_each_egg_is_found_whatever_heads_it(text, tmp_path):
    assert read(tmp_path, text)[1] == [(5, 1, 1, 1, 0, 2, 0)]


LOGS = {
    "a remark explains a word": """
Lot,Date,What I did,Eggs in,Clear,Dead,Chicks,Notes
A,16/03/2025,set,30,,,,
A,24/03/2025,1st candle,30,5,2,,
A,30/03/2025,2nd candle,23,0,1,,
A,03/04/2025,moved to hatcher,22,,,,
A,06/04/2025,hatch,22,,3,19,dead = fully formed in shell
B,17/04/2025,set,20,,,,
B,25/04/2025,1st candle,20,2,0,,
B,01/05/2025,2nd candle,18,0,1,,
B,05/05/2025,moved to hatcher,17,,,,
B,08/05/2025,hatch,17,,2,15,""",
    "a line below explains it": """
Lot,Date,What I did,Eggs in,Clear,Dead,Chicks
A,16/03/2025,set,30,,,
A,24/03/2025,1st candle,30,5,2,
A,30/03/2025,2nd candle,23,0,1,
A,03/04/2025,moved to hatcher,22,,,
A,06/04/2025,hatch,22,,3,19
B,17/04/2025,set,20,,,
B,25/04/2025,1st candle,20,2,0,
B,01/05/2025,2nd candle,18,0,1,
B,05/05/2025,moved to hatcher,17,,,
B,08/05/2025,hatch,17,,2,15

dead = dead in shell on hatch day""",
}


@pytest.mark.parametrize("text", LOGS.values(), ids=LOGS)
def test_a_row_per_look_counts_no_egg_twice(text, tmp_path):
    assert read(tmp_path, text)[1] == [(30, 5, 6, 0, 0, 19, 0), (20, 2, 3, 0, 0, 15, 0)]


def forms(*lines):
    return "\n\n".join("\n".join(lines).format(**values) for values in (
        dict(n=1, date="02/03/2025", eggs=28, clear=4, dead=1, late=1, moved=22, out=19, dis=3),
        dict(n=2, date="30/03/2025", eggs=24, clear=2, dead=2, late=0, moved=20, out=18, dis=2),
    ))  # fmt: skip


FORMS = {
    "class and number beside each other": forms(
        "Hatch no:,{n}", "Date set:,{date}", "Eggs set:,{eggs}", "Candled day 7,clear:,{clear},dead:,{dead}",
        "Candled day 14,clear:,-,dead:,{late}", "Transferred day 18:,{moved}", "Chicks hatched:,{out}",
        "Dead in shell:,{dis}"),
    "two fields a line": forms(
        "Hatch no:,{n},Breed:,Silkie", "Date set:,{date},Eggs set:,{eggs}",
        "Candled day 7,clear:,{clear},dead:,{dead}", "Candled day 14,clear:,-,dead:,{late}",
        "Transferred day 18:,{moved}", "Chicks hatched:,{out},Dead in shell:,{dis}"),
    "without colons": forms(
        "Batch,{n}", "Set,{date}", "Eggs,{eggs}", "1st candling,infertile,{clear},quit,{dead}",
        "2nd candling,infertile,0,quit,{late}", "To hatcher,{moved}", "Hatched,{out}", "Dead in shell,{dis}"),
    "the number first": forms(
        "Batch,{n}", "Set,{date}", "Eggs,{eggs}", "Day 7,{clear},clear,{dead},dead", "Day 14,{late},dead",
        "Hatched,{out}", "Dead in shell,{dis}"),
    "number and class in one cell": forms(
        "Batch,{n}", "Set,{date}", "Eggs,{eggs}", "Day 7,{clear} clear,{dead} dead", "Day 14,0 clear,{late} dead",
        "Hatched,{out}", "Dead in shell,{dis}"),
    "one class at the second look": forms(
        "Batch,{n}", "Set,{date}", "Eggs,{eggs}", "Candled day 7,clear,{clear},dead,{dead}", "Day 14,dead,{late}",
        "Hatched,{out}", "Dead in shell,{dis}"),
    "the class in the label": forms(
        "Batch,{n}", "Set,{date}", "Eggs,{eggs}", "Day 7 clear:,{clear},dead:,{dead}", "Day 14 dead:,{late}",
        "Hatched:,{out}", "Dead in shell:,{dis}"),
    "in German": forms(
        "Brut,{n}", "eingelegt,{date}", "Eier,{eggs}", "Schieren Tag 7,klar,{clear},abgestorben,{dead}",
        "Schieren Tag 14,klar,0,abgestorben,{late}", "umgelegt Tag 18,{moved}", "geschlüpft,{out}",
        "im Ei erstickt,{dis}"),
}  # fmt: skip


@pytest.mark.parametrize("text", FORMS.values(), ids=FORMS)
def test_what_stands_beside_a_look_of_a_form_is_of_that_look(text, tmp_path):
    season, batches = read(tmp_path, text)
    assert batches == [(28, 4, 5, 0, 0, 19, 0), (24, 2, 4, 0, 0, 18, 0)] and len(season.questions) <= 1


BLOCKS = {
    "a line of labels and dates": """
Zwerg-Wyandotten 2024

1. Brut;eingelegt am;01.03.2024;geschiert am;09.03.2024;Schlupf;22.03.2024
Stamm;Eier;klar;abgestorben;im Ei erstickt;geschlüpft
Stamm 1;20;3;1;2;14
Stamm 2;22;2;2;3;15

2. Brut;eingelegt am;29.03.2024;geschiert am;06.04.2024;Schlupf;19.04.2024
Stamm;Eier;klar;abgestorben;im Ei erstickt;geschlüpft
Stamm 1;24;4;1;1;18
Stamm 3;18;2;1;2;13""",
    "with totals": """
Marans 2024

Hatch 1,set,01/03/2024,hatched,22/03/2024,
Pen,Eggs,Clear,Dead,Dead in shell,Hatched
North,20,3,1,2,14
South,22,2,2,3,15
Total,42,5,3,5,29

Hatch 2,set,29/03/2024,hatched,19/04/2024,
Pen,Eggs,Clear,Dead,Dead in shell,Hatched
North,24,4,1,1,18
South,18,2,1,2,13
Total,42,6,2,3,31""",
    "label and date in one cell": """
Hatch 1,Set: 1 March 2024,Due: 22 March 2024,,,
Breed,Eggs,Clear,Dead,Dead in shell,Hatched
Leghorn,20,3,1,2,14
Marans,22,2,2,3,15

Hatch 2,Set: 29 March 2024,Due: 19 April 2024,,,
Breed,Eggs,Clear,Dead,Dead in shell,Hatched
Leghorn,24,4,1,1,18
Marans,18,2,1,2,13""",
}


@pytest.mark.parametrize("text", BLOCKS.values(), ids=BLOCKS)
def test_each_block_of_pens_has_its_own_date(text, tmp_path):
    season, batches = read(tmp_path, text)
    assert batches == [(20, 3, 3, 0, 0, 14, 0), (22, 2, 5, 0, 0, 15, 0), (24, 4, 2, 0, 0, 18, 0),
                       (18, 2, 3, 0, 0, 13, 0)]  # fmt: skip
    assert [f"{at:%m-%d}" for at in season.batches["set_at"]] == ["03-01", "03-01", "03-29", "03-29"]
    assert not len(season.questions)


WORDS = {
    "Italian": """
n.;Cosa;Messe;Uova;1ª speratura;2ª speratura;Schiusa
1;Livornese;2 marzo 2025;30 uova;5 chiare e 1 morto;tutte bene;21 pulcini nati, 3 morti nel guscio
2;Livornese;23 marzo 2025;14 uova;2 chiare;1 morto;9 pulcini nati, 2 morti nel guscio
3;Livornese;18 maggio 2025;24 uova;4 chiare, 2 morti;tutte bene;17 pulcini nati, 1 morto nel guscio""",
    "English": """
No,Breed,Set,Eggs,1st candling,2nd candling,Hatch
1,Leghorn,2 March 2025,30,"5 clear, 1 dead",all looking good,"21 hatched, 3 dead in shell"
2,Leghorn,23 March 2025,14,2 clear,1 dead,"9 hatched, 2 dead in shell"
3,Leghorn,18 May 2025,24,"4 clear, 2 dead",lovely,"17 hatched, 1 dead in shell\"""",
    "German": """
Nr;Rasse;eingelegt;Eier;1. Schieren;2. Schieren;Schlupf
1;Leghorn;2.3.2025;30;5 klar, 1 tot;alles gut;21 geschlüpft, 3 steckengeblieben
2;Leghorn;23.3.2025;14;2 klar;1 abgestorben;9 geschlüpft, 2 steckengeblieben
3;Leghorn;18.5.2025;24;4 klar, 2 tot;alles gut;17 geschlüpft, 1 steckengeblieben""",
    "French": """
N°;Race;Mise;Œufs;1er mirage;2e mirage;Éclosion
1;Leghorn;2/3/2025;30;5 clairs et 1 mort;tout va bien;21 éclos, 3 morts en coquille
2;Leghorn;23/3/2025;14;2 clairs;1 mort;9 éclos, 2 morts en coquille
3;Leghorn;18/5/2025;24;4 clairs, 2 morts;tout va bien;17 éclos, 1 mort en coquille""",
}


@pytest.mark.parametrize("text", WORDS.values(), ids=WORDS)
def test_a_death_told_in_words_counts_though_other_cells_say_all_is_well(text, tmp_path):
    assert read(tmp_path, text)[1] == [(30, 5, 4, 0, 0, 21, 0), (14, 2, 3, 0, 0, 9, 0), (24, 4, 3, 0, 0, 17, 0)]


@pytest.mark.parametrize(
    "heading",
    ["Quit in lockdwn", "Died in the hatcher", "Dead after transfer", "Lost during lockdown", "dead after lockdown",
     "Died in hatcher"],
)  # fmt: skip
def test_what_died_in_the_hatcher_is_dead_in_shell_and_no_look(heading, tmp_path):
    text = f"""
Marans 2025

Hatch,Date set,Eggs set,Clears,Quit day 7,{heading},Hatched
1,2/14/2025,18,3,1,2,12
2,3/21/2025,20,4,1,2,13"""
    season, batches = read(tmp_path, text)
    assert batches == [(18, 3, 3, 0, 0, 12, 0), (20, 4, 3, 0, 0, 13, 0)]
    assert season.looks.loc[season.looks["name"] != "hatch", "dead"].tolist() == [1, 1]


@pytest.mark.parametrize(
    "clear, first, second",
    [("Clear (out day 7)", "Left after 1st candling", "Left after 2nd candling (day 14)"),
     ("Clears day 7", "Left after first check", "Left d14"), ("Infertile", "Left after 1st candle", "Left day 14")],
)  # fmt: skip
def test_a_look_told_by_its_day_and_by_its_number_is_one(clear, first, second, tmp_path):
    text = f"""
Barnevelders 2025

Hatch,Set on,Eggs,{clear},{first},{second},To hatcher,Chicks,Dead in egg
1,22-02-2025,36,5,29,28,28,24,4
2,15-03-2025,42,6,35,34,34,31,3"""
    season, batches = read(tmp_path, text)
    assert batches == [(36, 5, 7, 0, 0, 24, 0), (42, 6, 5, 0, 0, 31, 0)] and not len(season.questions)
    assert [int(n) for n in season.looks["dead"].dropna() if n] == [2, 1, 1, 1]


TOO_MANY = {
    "a few in each of three rows": """
Hatch,Set,Eggs,Clear,Dead,Hatched
1,1/3/2025,20,2,1,18
2,8/3/2025,24,3,2,20
3,15/3/2025,30,3,2,26""",
    "many in each of six rows": """
Hatch,Set,Eggs,Clear,Dead,Hatched
1,1/3/2025,20,4,3,18
2,8/3/2025,24,5,4,20
3,15/3/2025,30,6,5,26
4,22/3/2025,18,3,4,16
5,29/3/2025,22,5,3,19
6,5/4/2025,22,5,3,19""",
    "in a row per look": """
Hatch,Date,What,Eggs,Clear,Dead,Chicks
1,1/3/2025,set,20,,,
1,8/3/2025,candled,,4,3,
1,22/3/2025,hatched,,,2,14
2,2/4/2025,set,20,,,
2,9/4/2025,candled,,4,3,
2,23/4/2025,hatched,,,2,14""",
}


@pytest.mark.parametrize("text", TOO_MANY.values(), ids=TOO_MANY)
def test_eggs_that_exceed_in_most_rows_are_asked_about_and_not_used(text, tmp_path):
    season, batches = read(tmp_path, text)
    assert not batches and "sums" in set(season.questions["code"])


def test_a_slip_in_one_row_of_three_is_told_and_used(tmp_path):
    text = """
Hatch,Set,Eggs,Clear,Dead,Hatched
1,1/3/2025,20,2,1,18
2,8/3/2025,24,2,2,20
3,15/3/2025,30,2,2,26"""
    season, batches = read(tmp_path, text)
    assert len(batches) == 3 and "sums" not in set(season.questions["code"])
    assert "too_many_eggs" in set(season.problems["code"])


@pytest.mark.parametrize("today, left_out", [("2025-03-20", ["2"]), ("2025-04-20", [])])
def test_no_chick_before_its_day_is_no_loss(today, left_out, tmp_path, monkeypatch):
    monkeypatch.setenv("HATCHKIT_TODAY", today)
    text = """
Marans 2025

Hatch,Set,Eggs,Clear,To hatcher,Hatched
1,20/2/2025,20,2,17,15
2,14/3/2025,24,2,22,0"""
    season, batches = read(tmp_path, text)
    assert left_out_of(season)["batch"].tolist() == left_out
    hatched = season.batches["hatched"].isna().tolist()
    assert hatched == [False, bool(left_out)] and batches[1][6] == (22 if left_out else 0)


def test_what_can_not_be_opened_is_told_beside_a_table_too(tmp_path):
    (tmp_path / "Book.numbers").write_bytes(b"x")
    season, _ = read(tmp_path, TOO_MANY["in a row per look"])
    told = season.problems[season.problems["file"] == "Book.numbers"]
    assert told["code"].tolist() == ["file_numbers"] and told["severity"].tolist() == ["doubtful"]


def test_names_of_one_table_are_told_in_one_way(tmp_path):
    text = """
Marans

Hatch,Set,Eggs,Clear,Dead,Hatched
1,25/1/2025,20,2,1,17
2,8/2/2025,24,2,2,20
1,25/1/2026,20,2,1,17
3,15/3/2026,30,2,2,26"""
    assert read(tmp_path, text)[0].batches["batch"].tolist() == ["1, 2025", "2, 2025", "1, 2026", "3, 2026"]


def test_lines_of_a_diary_cut_at_their_commas_are_lines():
    assert counts_eggs("3 clear", "en") and not counts_eggs("2nd candling clear", "en")
    assert not counts_eggs("Clear 1", "en") and not counts_eggs("7 day clears", "en")


def test_a_remark_that_tells_of_all_that_were_left_parts_them(tmp_path):
    text = """
Pekin ducks 2025
Set,No. eggs,Candle 1 (d8),Candle 2 (d16),Transfer,Out,Comments
2 Mar,20,17 good,16 good,16,14,2 DIS
30 Mar,24,21 good,21 good,20,17,"2 DIS, 1 pipped & died\""""
    season, batches = read(tmp_path, text)
    assert batches == [(20, 3, 3, 0, 0, 14, 0), (24, 3, 3, 1, 0, 17, 0)]
    assert season.looks["day"].round().tolist()[:2] == [8, 16]
