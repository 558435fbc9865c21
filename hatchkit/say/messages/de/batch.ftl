# Die Seite einer Brut: warum sie schlecht schlüpfte, wie sicher das ist, was zu ändern ist.

page_batch_title = { $name }, Brut { $batch }: { $poor ->
        [no] wie ist sie geschlüpft?
        [unknown] wie ist sie geschlüpft?
       *[yes] warum schlüpfte sie schlecht?
    }
page_batch_file = { $name }-Brut-{ $batch }
page_batch_counts = { EGGS($set) ->
        [one] Ein Ei
       *[other] { EGGS($set) } Eier
    } ({ $kind }){ $set_at ->
        [none] { "" }
       *[day] , eingelegt am { DAY($set_at) }
    }: { $hatched ->
        [none] was schlüpfte, ist nicht aufgeschrieben.
       *[known] { EGGS($hatched) ->
            [one] 1 gesundes Küken
           *[other] { EGGS($hatched) } gesunde Küken
        }, { SHARE($share_of_set) } der eingelegten Eier (üblich { SHARE($usual_of_set) }){ $share_hatched ->
            [none] { $share_low ->
                [none] .
               *[range] , { SHARE($share_low) } bis { SHARE($share_high) } der entwickelten, da von { EGGS($unaccounted) ->
                    [one] 1 Ei
                   *[other] { EGGS($unaccounted) } Eiern
                } der Verbleib unbekannt ist.
            }
           *[share] , { SHARE($share_hatched) } der { EGGS($developing) } entwickelten (üblich { SHARE($usual) }).
        }
    }

ask_why = { $poor ->
        [no] Was kostete dennoch Eier?
       *[yes] Warum?
    }
why_confident = Sehr wahrscheinlich: { WORD($key, kind: "cause") }. { $reason }.
why_probable = Wahrscheinlich: { WORD($key, kind: "cause") }. { $reason }.
why_two_causes = Wahrscheinlich zweierlei: { WORD($first, kind: "cause") } (etwa { EGGS($eggs_first) } Eier) und { WORD($second, kind: "cause") } (etwa { EGGS($eggs_second) }). { $reason }.
why_bad_luck = Gewöhnliches Pech erklärt es; keine Ursache sticht hervor.
why_cannot_tell = Die Aufzeichnungen können es nicht sagen: { $reason }. { COUNT($tied) ->
        [0] { "" }
        [one] { "" }
       *[other] So gut wie gleichauf: { LIST($tied) }.
    }
why_not_poor = Das war keine schlechte Brut: { EGGS($hatched) } von { EGGS($set) } schlüpften, im Rahmen des Üblichen.
why_not_over = Wie Brut { $batch } ausging, ist nicht bekannt, darum lässt sich keine Ursache abwägen.
reason_stage = { $about ->
        [yes] etwa { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") }, üblich { EGGS($usual) ->
        [one] ist 1
       *[other] sind { EGGS($usual) }
    }
reason_unaccounted = { EGGS($eggs) ->
        [one] von 1 Ei
       *[other] von { EGGS($eggs) } Eiern
    } ist der Verbleib unbekannt
reason_none = in keinem Abschnitt ging mehr verloren als üblich
reason_spell = { $spell }; { $about ->
        [yes] etwa { EGGS($eggs) }
       *[no] { EGGS($eggs) }
    } { WORD($stage, kind: "loss") } (üblich { EGGS($usual) })
reason_of_spell = { $kind ->
        [warm] { EGGS($hours) } h in Luft bis { DEGREES($extreme_c) } ab Tag { EGGS($day_start) }
       *[cold] { EGGS($hours) } h in Luft bis { DEGREES($extreme_c) } ab Tag { EGGS($day_start) }
    }
eggs_of_cause_weight = { WORD($cause, kind: "cause") } ({ SHARE($share) })
why_sure_confident = { SHARE($share) } des Gewichts unter allen Ursachen; danach { $next }. Wahrscheinlich, nicht bewiesen{ $unaccounted ->
        [0] .
       *[other] ; Eier mit unbekanntem Verbleib: { EGGS($unaccounted) }.
    }
why_sure_probable = { SHARE($share) } des Gewichts unter allen Ursachen; danach { $next }. Wahrscheinlich, nicht sicher{ $unaccounted ->
        [0] .
       *[other] ; Eier mit unbekanntem Verbleib: { EGGS($unaccounted) }.
    }
why_sure_two_causes = Zwei zusammen passen besser als eine allein; wahrscheinlich, nicht bewiesen.
why_sure_bad_luck = { SHARE($share) } des Gewichts; ein kleiner Schaden könnte sich in so wenigen Eiern verbergen.
why_sure_cannot_tell = Nicht sicher: das Wahrscheinlichste ({ WORD($key, kind: "cause") }) hat { SHARE($share) } des Gewichts{ $unaccounted ->
        [0] .
       *[other] , und von { EGGS($unaccounted) } Eiern ist der Verbleib unbekannt.
    }
why_sure_not_poor = So wenige Verluste über das Übliche hinaus weisen auf keine Ursache; am ehesten wäre es: { WORD($key, kind: "cause") } ({ SHARE($share) } des Gewichts).
why_sure_not_over = Schreiben Sie auf, wie sie ausging, und rufen Sie dies noch einmal auf.

ask_standing = { $poor ->
        [no] War sie schlecht?
        [unknown] War sie schlecht?
       *[yes] Wie schlecht war sie?
    }
standing_embryos = { EGGS($hatched) } von { EGGS($set) } Eiern schlüpften, { $far ->
        [far] weit unter
       *[below] unter
    } den üblichen { SHARE($usual_of_set) }, denn mehr Embryonen starben als üblich; Platz { $place }, von der schlechtesten an gezählt, von { $of ->
        [one] einer Brut
       *[other] { $of } Bruten
    }.
standing_clears = { EGGS($hatched) } von { EGGS($set) } Eiern schlüpften, { $far ->
        [far] weit unter
       *[below] unter
    } den üblichen { SHARE($usual_of_set) }, weil { EGGS($clear) } klar waren; die entwickelten schlüpften wie üblich. Platz { $place } von { $of }, von der schlechtesten an gezählt.
standing_removed = { EGGS($hatched) } von { EGGS($set) } Eiern schlüpften, { $far ->
        [far] weit unter
       *[below] unter
    } den üblichen { SHARE($usual_of_set) }, weil { EGGS($removed) } herausgenommen wurden; die entwickelten schlüpften wie üblich. Platz { $place } von { $of }, von der schlechtesten an gezählt.
standing_unknown = { EGGS($hatched) } von { EGGS($set) } Eiern schlüpften; von { EGGS($unaccounted) } ist der Verbleib unbekannt, darum lässt sich nicht sagen, ob das schlecht war.
standing_no = { EGGS($hatched) } von { EGGS($set) } Eiern schlüpften; üblich sind { SHARE($usual_of_set) }, also war es kein schlechter Schlupf.
standing_clears_not_counted = Ihre klaren Eier wurden nie gezählt; ein ungeöffnetes Ei, das als abgestorben notiert ist, kann also klar gewesen sein.
table_standing = Alle Bruten, die schlechteste zuerst
head_share_hatched = Der entwickelten Eier
head_usual_of_set_share = Üblich der eingelegten
head_usual_share = Üblich der entwickelten

ask_fate = Was wurde aus den Eiern?
fate_eggs = Von { EGGS($set) } Eiern ergaben { EGGS($hatched) } gesunde Küken{ COUNT($lost) ->
        [0] .
       *[other] ; { LIST($lost, most: 5) }.
    }
table_pattern = Eier nach Abschnitt, und was in einer Brut dieser Größe üblich ist
head_usual_eggs = Üblich

ask_evidence = Was spricht dafür, und was war anders?
evidence_weights = Das meiste Gewicht: { LIST($causes) }.
evidence_method = Jede Ursache wird danach gewogen, wie gut sie die Tage und Abschnitte der Verluste erklärt, neben Ihren anderen Bruten und einem veröffentlichten Wert, und danach, was Aufzeichnung, Tabellen und Ihre Bemerkungen sagen. Auch Pech und eine nicht aufgeführte Ursache werden mitgewogen; was gleichauf liegt, bleibt gleichauf.
table_evidence = Die wahrscheinlichsten Ursachen, und was für und gegen sie spricht
head_cause = Ursache
head_share_weight = Gewicht
head_fits = Passt, weil
head_against = Dagegen
head_unknown = Nicht bekannt
head_check_next = Als Nächstes prüfen

ask_met = Was bekamen die Eier ab?
met_not_logged = Für diese Brut wurde keine Temperatur aufgezeichnet, darum ist von Hitze oder Kälte nichts bekannt.
met_spells = { LIST($spells) }.
met_nothing = Nichts Auffälliges: die Temperatur von { $machine } blieb richtig, bis auf alltägliches Öffnen.
batch_water_on_target = Ja: { SHARE($projected_share) } bis zum Umlegen (gewünscht { SHARE($target_low) } bis { SHARE($target_high) }).
batch_water_too_little = Zu wenig: { SHARE($projected_share) } bis zum Umlegen (gewünscht { SHARE($target_low) } bis { SHARE($target_high) }).
batch_water_too_much = Zu viel: { SHARE($projected_share) } bis zum Umlegen (gewünscht { SHARE($target_low) } bis { SHARE($target_high) }).
batch_water_cannot_tell = Das lässt sich nicht sicher sagen: etwa { SHARE($projected_share) } bis zum Umlegen ({ SHARE($projected_low) } bis { SHARE($projected_high) }; gewünscht { SHARE($target_low) } bis { SHARE($target_high) }).
batch_clock_on_time = Pünktlich, soweit eine solche Vorhersage es sagen kann.
batch_clock_early = { EGGS($hours) } h zu früh, mehr als die Vorhersage unsicher ist.
batch_clock_late = { EGGS($hours) } h zu spät, mehr als die Vorhersage unsicher ist.
batch_place_pattern = Vielleicht: die abgestorbenen liegen anders, als der Zufall sie legt.
batch_place_no_sign = Kein Anzeichen dafür.

ask_change = Was ist bei der nächsten Brut zu ändern?
change_set = Legen Sie { EGGS($eggs) } Eier ein, um mit { SHARE($sure) } Sicherheit mindestens { EGGS($chicks) } gesunde Küken zu haben; rechnen Sie mit etwa { EGGS($chicks_middle) } ({ EGGS($chicks_low) } bis { EGGS($chicks_high) }). { $changes ->
        [0] Nichts verlangt eine andere Einstellung.
        [one] Eines ist zu ändern oder aufzuschreiben.
       *[other] { $changes } Dinge sind zu ändern oder aufzuschreiben.
    }
change_too_many = Mindestens { EGGS($chicks) } Küken lassen sich nicht in einer Brut planen: planen Sie mehrere, oder weniger Küken.
change_refused = { $why }
table_changes = Was zu ändern ist, das Wichtigste zuerst
head_what = Ändern
head_now = Jetzt
head_to = Künftig
head_why = Warum
head_how_sure = Wie sicher

ask_look = Worauf ist in nicht geschlüpften Eiern zu achten?
look_open = Öffnen Sie jedes nicht geschlüpfte Ei, das nicht riecht, schäumt oder nässt, das stumpfe Ende zuerst, und schreiben Sie auf, welches Bild am besten passt.
look_days = Tage sind Tage seit dem Einlegen; für andere Arten als Hühner sind sie umgerechnet und auf etwa drei Tage genau. Was riecht, schäumt oder nässt, kommt ungeöffnet weg.
table_breakout = Bilder geöffneter Eier, und worauf sie hinweisen
head_look = Bild
head_days = Tag
head_see = Was man sieht
head_means = Was es heißt
head_points_to = Weist hin auf

batch_unknown_proof = Zahlen und Aufzeichnungen weisen auf wahrscheinliche Ursachen hin; sie beweisen keine. Zwei Ursachen mit demselben Verlust bleiben gleichauf, bis eine Aufzeichnung sie trennt.
batch_unknown_list = Die Gewichte gelten für die Ursachen auf der Liste von hatchkit und für seine angegebenen, gerundeten Werte.
batch_unknown_clear = Ein klares Ei, das nicht geöffnet wurde, ist weder unbefruchtet noch abgestorben: man weiß es nicht.
batch_unknown_illness = Eine Krankheit lässt sich in diesen Zahlen nicht sehen. Ungewöhnliche Todesfälle sind Sache des Tierarztes.

# Verluste, so wie sie in einem Satz gezählt werden: „18 spät abgestorben“.
loss_hatched = gesunde Küken
loss_culled = aussortierte Küken
loss_clear = klar
loss_infertile = unbefruchtet
loss_early = früh abgestorben
loss_mid = in der Mitte abgestorben
loss_late = spät abgestorben
loss_dead = abgestorben
loss_pipped_dead = angepickt und gestorben
loss_removed = herausgenommen
loss_unaccounted = mit unbekanntem Verbleib

# Verluste mit ihrer Zahl: „18 spät abgestorben“, „1 klares Ei“.
eggs_hatched = { EGGS($eggs) ->
        [one] 1 gesundes Küken
       *[other] { EGGS($eggs) } gesunde Küken
    }
eggs_culled = { EGGS($eggs) ->
        [one] 1 aussortiertes Küken
       *[other] { EGGS($eggs) } aussortierte Küken
    }
eggs_clear = { EGGS($eggs) } klar
eggs_infertile = { EGGS($eggs) } unbefruchtet
eggs_early = { EGGS($eggs) } früh abgestorben
eggs_mid = { EGGS($eggs) } in der Mitte abgestorben
eggs_late = { EGGS($eggs) } spät abgestorben
eggs_dead = { EGGS($eggs) } abgestorben
eggs_pipped_dead = { EGGS($eggs) } angepickt und gestorben
eggs_removed = { EGGS($eggs) } herausgenommen
eggs_unaccounted = { EGGS($eggs) } mit unbekanntem Verbleib
