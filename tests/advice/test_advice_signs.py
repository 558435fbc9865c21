"""What the keeper saw is read in twelve languages; what he denies, or what is not in the table, says nothing."""

import pytest

from hatchkit import reference
from hatchkit.advice import signs

SAID = [
    ("power cut at night, 6 h", "power_cut"),
    ("Stromausfall in der Nacht", "power_cut"),
    ("coupure de courant de 5 h", "power_cut"),
    ("stroomuitval, 4 uur", "power_cut"),
    ("se fue la luz toda la noche", "power_cut"),
    ("senza corrente dalle 3", "power_cut"),
    ("faltou a luz de madrugada", "power_cut"),
    ("awaria prądu 5 godzin", "power_cut"),
    ("výpadek proudu v noci", "power_cut"),
    ("strömavbrott hela natten", "power_cut"),
    ("strømafbrydelse i 6 timer", "power_cut"),
    ("áramszünet volt éjjel", "power_cut"),
    ("dry and stuck to the shell", "dry_stuck"),
    ("Küken trocken und festgeklebt", "dry_stuck"),
    ("poussins séchés, collés à la coquille", "dry_stuck"),
    ("drowned, wet", "drowned"),
    ("ertrunken, voll Wasser", "drowned"),
    ("chambre à air trop petite", "small_air_cells"),
    ("Luftkammern zu groß", "large_air_cells"),
    ("curled toes in four", "curled_toes"),
    ("schwarze Nabel", "black_navels"),
    ("œufs expédiés par la poste", "posted"),
    ("our rooster was lame since March", "cock_trouble"),
    ("Ein Hahn für vierzig Hennen", "cock_trouble"),
    ("z jednym kogutem, bez koguta w marcu", "cock_trouble"),
    ("uova tenute a lungo in cantina", "eggs_old"),
    ("från de äldsta hönorna", "old_hens"),
    ("ran a bit warm throughout", "ran_warm"),
    ("kicsit hideg volt", "ran_cool"),
    ("humedad demasiado alta, humedad alta", "damp_air"),
    ("moc sucho celou dobu", "dry_air"),
    ("ingen vand: uden vand i klækningen", "hatch_without_water"),
    ("hinten wärmer als vorne", "uneven_machine"),
    ("ovos trazidos da planície", "lowland_eggs"),
    ("der Schlupfbrüter war schmutzig", "hatcher_dirty"),
    ("a towel over the top, blanket over it", "covered_machine"),
    ("œufs ramassés au sol", "floor_eggs"),
    ("dooierzak gesprongen", "blood_in_shell"),
    ("air cells were rather small", "small_air_cells"),
    ("three weak chicks", "weak_chicks"),
    ("Wendung ausgefallen seit Tag 5", "turner_stopped"),
    ("head in the small end", "head_small_end"),
]


@pytest.mark.parametrize(("text", "sign"), SAID)
def test_a_remark_in_free_words_is_read(text, sign):
    assert sign in signs.read(text)


@pytest.mark.parametrize(
    "text",
    [
        "no power cut, all went well",
        "kein Stromausfall",
        "pas de coupure de courant",
        "nebyl výpadek proudu",
        "nem volt áramszünet",
    ],
)
def test_what_is_denied_is_not_read(text):
    assert signs.read(text) == {}


def test_two_words_belong_together_only_within_a_clause():
    assert set(signs.read("small chicks, large air cells")) == {"small_chicks", "large_air_cells"}


@pytest.mark.parametrize(
    "text",
    [
        "new feed",
        "visitors on Sunday",
        "thermostat set to 37.7",
        "turner off day 18",
        "eggs for sale",
        "some long eggs",
        "ein schöner Frühling",
        "",
    ],
)
def test_words_that_are_not_in_the_table_say_nothing(text):
    assert signs.read(text) == {}


def test_a_phrase_joins_two_stems_at_most():
    """The pattern of a phrase is made when its words first turn up: a phrase of three stems would break there."""
    assert not [phrase for _, phrase, words in signs._phrases() if phrase.count("+") > 1 or "" in words or not words]


def test_a_remark_that_is_read_twice_is_the_readers_own():
    signs.read("power cut")["power_cut"] = "spoilt"
    assert signs.read("power cut") == {"power_cut": "power cut"}


def test_each_sign_has_words_in_twelve_languages_a_source_and_known_causes():
    table, causes = reference.load("signs"), set(reference.load("causes")["cause"])
    assert not table["sign"].duplicated().any() and len(table) >= 40
    assert table[[f"words_{language}" for language in signs.LANGUAGES]].notna().all(axis=None)
    assert table[["for", "source", "sure"]].notna().all(axis=None)
    assert {cause for weights in signs.factors().values() for cause in weights} <= causes


@pytest.mark.parametrize("language", signs.LANGUAGES)
def test_the_first_word_of_each_sign_is_read_as_that_sign(language):
    for row in reference.load("signs").to_dict("records"):
        word = str(row[f"words_{language}"]).split("|")[0].replace("+", " ")
        assert row["sign"] in signs.read(word), (language, word)


def test_ticks_and_remarks_are_both_read_and_shown_as_read():
    table = signs.found({"signs": "Drowned; Open navels", "notes": "small air cells, Stromausfall"})
    assert set(table["sign"]) == {"drowned", "open_navels", "small_air_cells", "power_cut"}
    assert table.set_index("sign").loc["power_cut", ["said", "column"]].tolist() == ["stromausfall", "notes"]
