"""Sheets whose batches, looks or words are told apart by where they stand: trays, ordinals, clears before eggs left."""

import pytest
from test_sheets_neighbours import read

import hatchkit

#: Set, clear, dead, pipped, removed, hatched, unaccounted of each batch, and the dead by look.
CLEARS_FIRST = {
    "german": (
        "Brut,Eingelegt,Eier,Unbefruchtet,Übrig Tag 8,Übrig Tag 15,Küken,Tot im Ei",
        ["1,02.03.2025,30,4,25,23,20,3", "2,30.03.2025,24,3,21,20,18,2", "3,27.04.2025,28,5,21,21,17,4"],
        [(30, 4, 6, 0, 0, 20, 0), (24, 3, 3, 0, 0, 18, 0), (28, 5, 6, 0, 0, 17, 0)],
        [1, 2, 1, 2],
    ),
    "spanish": (
        "Tanda,Puestos,Huevos,Claros,Quedan día 7,Quedan día 18,Pollitos,Muertos en cáscara",
        ["1,02/03/2025,20,3,16,15,13,2", "2,30/03/2025,22,2,20,17,17,0", "3,27/04/2025,18,1,15,15,14,1"],
        [(20, 3, 4, 0, 0, 13, 0), (22, 2, 3, 0, 0, 17, 0), (18, 1, 3, 0, 0, 14, 0)],
        [1, 1, 3, 2],
    ),
    "english, three looks": (
        "Hatch,Set,Eggs,Clears,Left day 7,Left day 14,Left day 18,Chicks,Dead in shell",
        ["1,2025-03-02,40,6,33,31,31,28,3", "2,2025-03-30,36,5,31,30,28,28,0", "3,2025-04-27,38,4,33,33,32,30,2"],
        [(40, 6, 6, 0, 0, 28, 0), (36, 5, 3, 0, 0, 28, 0), (38, 4, 4, 0, 0, 30, 0)],
        [1, 2, 1, 2, 1, 1],
    ),
}


@pytest.mark.parametrize("head, rows, batches, dead", CLEARS_FIRST.values(), ids=CLEARS_FIRST)
def test_clears_before_eggs_left_by_day_are_of_the_first_look(head, rows, batches, dead, tmp_path):
    season, found = read(tmp_path, "\n".join([head, *rows]))
    assert found == batches and set(season.questions["code"]) <= {"species"}
    assert [int(eggs) for eggs in season.looks["dead"].dropna() if eggs] == dead
    assert season.looks.loc[season.looks["clear"].fillna(0) > 0, "look"].unique().tolist() == [1]


EXPLAINED = {
    "english": (
        "Set #,Set on,Eggs,Fertile,Quit by day 14,Not hatched,Poults\n1,03/09/2025,24,20,1,2,17\n"
        "2,03/23/2025,32,26,0,4,22\n3,04/16/2025,40,30,2,5,23",
        '"Not hatched = still in the shell on day 30, opened and all were dead."',
        [(24, 4, 3, 0, 0, 17, 0), (32, 6, 4, 0, 0, 22, 0), (40, 10, 7, 0, 0, 23, 0)],
    ),
    "german": (
        "Brut,Eingelegt,Eier,Klar,Nicht geschlüpft,Küken\n1,09.03.2025,24,4,3,17\n2,23.03.2025,32,6,4,22\n"
        "3,16.04.2025,40,10,7,23",
        '"Nicht geschlüpft = am Tag 22 noch im Ei, alle tot."',
        [(24, 4, 3, 0, 0, 17, 0), (32, 6, 4, 0, 0, 22, 0), (40, 10, 7, 0, 0, 23, 0)],
    ),
}


@pytest.mark.parametrize("table, sentence, batches", EXPLAINED.values(), ids=EXPLAINED)
def test_a_sentence_about_a_plain_heading_does_not_change_it(table, sentence, batches, tmp_path):
    season, found = read(tmp_path, f"{table}\n\n{sentence}")
    assert found == batches and set(season.questions["code"]) <= {"species"}


TRAYS = {
    "english": "Tray,Date set,Eggs,From\nT1,2025-01-18,42,north pen\nT2,2025-02-01,40,north pen\nT3,2025-02-15,36,yard"
    "\n\nTray,Hatched,Clear,Dead in shell,Pips (dead)\nT1,30,7,4,1\nT3,26,4,5,1\nT2,28,6,6,0",
    "german": "Horde,Eingelegt,Eier,Stamm\nH1,18.01.2025,42,Nord\nH2,01.02.2025,40,Nord\nH3,15.02.2025,36,Hof"
    "\n\nHorde,Geschlüpft,Klar,Steckengeblieben,Angepickt tot\nH1,30,7,4,1\nH3,26,4,5,1\nH2,28,6,6,0",
}


@pytest.mark.parametrize("text", TRAYS.values(), ids=TRAYS)
def test_a_second_table_by_tray_tells_of_the_batches_of_the_first(text, tmp_path):
    _, found = read(tmp_path, text)
    assert found == [(42, 7, 4, 1, 0, 30, 0), (40, 6, 6, 0, 0, 28, 0), (36, 4, 5, 1, 0, 26, 0)]


def test_trays_used_twice_name_no_batch(tmp_path):
    text = TRAYS["english"].replace("T2,2025-02-01", "T1,2025-02-01").replace("\nT2,28,6,6,0", "")
    season, found = read(tmp_path, text)
    assert [batch[5] for batch in found] == [0, 0, 0] and (season.problems["code"] == "batch_lacks").sum() == 2


DIARIES = {
    "english": "Eggs 2024\n2 March: Put 20 eggs from the Sussex in the incubator. That is the first lot.\n"
    "10 March: Candled the first lot: 2 clear and none dead.\n"
    "20 March: 18 eggs set this evening, all from the Marans (second lot).\n"
    "23 March: 17 chicks hatched of the first lot. 1 dead in the shell.\n"
    "28 March: Candled the second lot: 3 clear and 1 dead.\n"
    "10 April: 12 chicks hatched of the second lot. 2 dead in the shell.",
    "german": "Brutbuch 2024\n2. März: 20 Eier von den Sussex eingelegt, die erste Brut.\n"
    "10. März: Die erste Brut geschiert: 2 klar.\n20. März: 18 Eier von den Marans eingelegt, die zweite Brut.\n"
    "23. März: 17 Küken geschlüpft aus der ersten Brut. 1 tot im Ei.\n"
    "28. März: Die zweite Brut geschiert: 3 klar und 1 abgestorben.\n"
    "10. April: 12 Küken geschlüpft aus der zweiten Brut. 2 tot im Ei.",
}


@pytest.mark.parametrize("text", DIARIES.values(), ids=DIARIES)
def test_the_second_lot_of_a_diary_is_the_second_batch_it_set(text, tmp_path):
    _, found = read(tmp_path, "\n".join(f'"{line}"' for line in text.split("\n")))
    assert found == [(20, 2, 1, 0, 0, 17, 0), (18, 3, 3, 0, 0, 12, 0)]


@pytest.mark.parametrize("word", ["Pipelt, elpusztult", "Csipett, elhalt", "Kopogott, elpusztult"])
def test_a_hungarian_word_for_pipped_beside_dead_is_no_second_candling(word, tmp_path):
    text = (
        f'Sorszám,Dátum,Tojás db,Terméketlen,Lámpázáskor elhalt,Befulladt,"{word}",Kikelt\n'
        "1,2025.02.03,100,13,5,9,3,70\n2,2025.02.10,80,9,3,4,1,63\n3,2025.03.03,100,16,4,10,4,66"
    )
    _, found = read(tmp_path, text)
    assert [batch[1:6] for batch in found] == [(13, 14, 3, 0, 70), (9, 7, 1, 0, 63), (16, 14, 4, 0, 66)]


def test_the_first_line_of_a_diary_names_its_birds_and_chicks_are_of_any_bird(tmp_path):
    text = (
        "Rugedagbog, kalkuner 2024;\nDato;Notat\n09.03.2024;Hold 1: lagt 16 æg i maskinen.\n"
        "17.03.2024;Hold 1: lyste æggene, 1 ubefrugtede og 1 død.\n"
        "06.04.2024;Hold 1: 12 kyllinger klækket, 2 døde i skallen.\n"
        "13.04.2024;Hold 2: lagt 24 æg i maskinen.\n21.04.2024;Hold 2: lyste æggene, 6 ubefrugtede.\n"
        "11.05.2024;Hold 2: 14 kyllinger klækket, 4 døde i skallen.\n"
    )
    (tmp_path / "rugedagbog.csv").write_text(text, encoding="utf-8")
    season = hatchkit.load_season(tmp_path)
    assert season.batches["species"].tolist() == ["turkey", "turkey"] and season.questions.empty
