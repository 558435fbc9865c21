# Wie eine Tabelle gelesen wurde: wofür jede Spalte genommen wurde, wie sicher, und warum. field_* nennt ein Feld des Programms.

reading_words = { $when ->
        [day] { $field }, Tag { PLAIN($day) }{ $transfer ->
            [yes] { " " }(Umlegen)
           *[no] { "" }
        }
        [transfer] { $field }, beim Umlegen
        [order] { $field }, { $order ->
            [1] 1. Schieren
            [2] 2. Schieren
            [3] 3. Schieren
           *[other] { PLAIN($order) }. Schieren
        }
       *[none] { $field }
    }{ $within ->
        [yes] , Teil der Spalte davor
       *[no] { "" }
    }

field_eggs_set = eingelegte Eier
field_clear = klar
field_dead = abgestorben
field_left = Eier übrig
field_fertile = befruchtete Eier
field_removed = herausgenommen
field_rotten = faul, herausgenommen
field_cracked = angeknickt, herausgenommen
field_pipped = angepickt, gestorben
field_dis = im Ei steckengeblieben
field_unhatched = nicht geschlüpft
field_hatched = geschlüpft
field_culled = aussortiert
field_weak = schwache Küken
field_malpos = falsch liegend
field_broken_infertile = geöffnet: unbefruchtet
field_broken_early = geöffnet: früh abgestorben
field_broken_mid = geöffnet: in der Mitte abgestorben
field_broken_late = geöffnet: spät abgestorben
field_healthy = gesunde Küken
field_total_dead = alle abgestorbenen zusammen
field_contaminated = verdorben
field_cracked_of = angeknickt
field_opened1_infertile = klare geöffnet: unbefruchtet
field_opened1_dead = klare geöffnet: abgestorben
field_set_at = Datum des Einlegens
field_look_at = Datum des Schierens
field_hatch_at = Datum des Schlupfes
field_first_hatch_at = erstes Küken um
field_last_hatch_at = letztes Küken um
field_due = Schlupftermin, nicht verwendet
field_date = Datum
field_laid_at = Legedatum, nicht verwendet
field_batch = Name der Brut
field_breed = Rasse
field_species = Vogelart
field_pen = Abteil oder Stamm
field_keeper = Züchter
field_incubator = Brüter
field_hatcher = Schlupfbrüter
field_tray = Horde oder Einschub
field_hen = Henne
field_cock = Hahn
field_notes = Bemerkungen
field_what = was gesehen oder getan wurde
field_number = Zahl der Eier
field_fate = Verbleib des Eies
field_egg = Nummer des Eies
field_place = Platz
field_signs = Zeichen
field_posted = mit der Post versandt
field_broody = unter einer Glucke
field_result = was daraus wurde
field_tray_row = Reihe auf der Horde
field_tray_col = Spalte auf der Horde
field_stage_day = Alter beim Absterben
field_eggs_weighed = gewogene Eier
field_weight = Gewicht
field_stored_days = Lagertage
field_flock_age_weeks = Alter des Stammes
field_look_day = Tag des Schierens
field_temperature = Temperatur
field_hour = Uhrzeit
field_humidity = Feuchte
field_percent = ein Anteil, nicht verwendet
field_year = Jahr
field_ignore = nicht verwendet
field_dead_in_shell = im Ei steckengeblieben
field_pipped_dead = angepickt, gestorben

species_chicken = Hühner
species_duck = Enten
species_goose = Gänse
species_turkey = Puten
species_quail = Wachteln
species_muscovy = Warzenenten
species_guinea = Perlhühner
species_pheasant = Fasane
species_bobwhite = Baumwachteln
species_chukar = Chukarhühner
species_emu = Emus
species_ostrich = Strauße
species_peafowl = Pfauen
species_pigeon = Tauben
species_partridge = Rebhühner
species_swan = Schwäne
species_rhea = Nandus
species_button_quail = Zwergwachteln
species_parrot = Papageien
species_mulard = Mularden
species_mixed = mehrere Arten

sure_sure = sicher
sure_likely = wahrscheinlich
sure_open = offen

why_words = Worte
why_adds_up = geht in { $rows } von { $of ->
        [one] { $of } Zeile
       *[other] { $of } Zeilen
    } auf
why_values = { $kind ->
        [dates] enthält Daten
        [counts] enthält Zahlen
        [names] enthält Namen
        [texts] enthält Worte
        [birds] nennt Vögel
        [fates] sagt, was aus Eiern wurde
        [events] erzählt Ereignisse
        [shares] enthält Anteile
        [weights] enthält Gewichte
        [running] zählt 1, 2, 3
        [empty] ist leer
       *[other] seine Werte
    }
why_place = wo sie steht
why_order = ihr Platz unter den Schierterminen
why_span = die Überschrift darüber
why_answer = Sie sagten es so
why_told = season.toml sagt es so
why_nothing = nichts spricht für etwas anderes
