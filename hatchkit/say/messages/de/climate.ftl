# Was Brüter, Thermometer, Uhr und Waage erzählen, für alle, die weiter sehen wollen.

lasting = { $unit ->
        [min] { EGGS($number) } min
        [h] { TENTH($number) } h
       *[days] { TENTH($number) } Tage
    }

## Was an einer Kurve für ihr Wort spricht

evidence_jumped = sprang zwischen zwei Messungen um { STEP($in_k) } und wieder um { STEP($out_k) } zurück, ohne Bogen
evidence_probes = die Fühler des Brüters weichen um { STEP($apart_k) } mehr voneinander ab als vorher: einer davon misst falsch
evidence_loading = in den ersten Stunden nach dem Einlegen; { STEP($depth_k) } unter dem, was sein soll
evidence_unlogged = { DEGREES($extreme_c) } an der { $worst ->
        [coldest] kältesten
       *[warmest] wärmsten
    } Stelle, { $since ->
        [setting] vom Einlegen an { $whole_h } außerhalb des Bereichs
        [too_long] vom Einlegen an { $whole_h } außerhalb des Bereichs, länger als Eier zum Erwärmen brauchen
       *[unknown] und was kurz davor war, ist nicht aufgezeichnet
    }{ $stayed ->
        [yes] {" "}und blieb { $whole_h } warm
       *[no] { "" }
    }
evidence_fell_slowly = fiel langsam um { STEP($depth_k) }, über { $over_h }
evidence_fell_fast = fiel um { STEP($depth_k) }, das meiste in { $most_h }{ $then ->
        [ajar] {" "}und blieb { $whole_h } niedrig (angelehnt?)
        [back] , nach { $whole_h } wieder im Bereich
       *[open] { "" }
    }{ $dry_pct ->
        [none] { "" }
       *[drier] ; die Feuchte fiel um { EGGS($dry_pct) } %, wie wenn Raumluft hereinkommt
    }
evidence_cooled = fiel über { $over_h } um { STEP($fell_k) }, höchstens { STEP($per_hour_k) } je Stunde, bis auf { DEGREES($extreme_c) }: wie ein Kasten ohne Heizung abkühlt{ $damp_pct ->
        [none] { "" }
       *[damper] ; die Feuchte stieg um { EGGS($damp_pct) } %, wie in einem geschlossenen Kasten
    }
evidence_fell = fiel in { $over_h } um { STEP($depth_k) }{ $coarse ->
        [yes] ; die Messungen liegen zu weit auseinander, um die Kurve zu sehen
       *[no] { "" }
    }
evidence_rose = stieg über { $over_h } um { STEP($depth_k) } auf { DEGREES($extreme_c) }{ $stayed ->
        [yes] {" "}und blieb { $whole_h } warm
       *[no] { "" }
    }
evidence_beside = lief bei etwa { DEGREES($at_c) }, dauernd { $off_k ->
        [0] knapp
       *[far] { STEP($off_k) }
    } { $side ->
        [below] unter
       *[above] über
    } dem Bereich für { $hatching ->
        [yes] den Schlupf in{" "}
       *[no] { "" }
    }{ $air ->
        [still] ruhende Luft
       *[fan] Umluft
    } ({ DEGREES($low_c) } bis { DEGREES($high_c) }{ $air ->
        [still] {" "}an der Oberkante der Eier
       *[fan] { "" }
    }; gewünscht sind etwa { DEGREES($wanted_c) }{ $assumed ->
        [yes] ; season.toml sagt nicht, ob er ein Gebläse hat
       *[no] { "" }
    })

## Eine Phase ausführlich

spell_told = { $event }. Brüter { $incubator }, ab { MINUTE($start) }, { $lasting }: { $on ->
        [egg] das geschätzte Ei zu { $kind ->
            [warm] warm, in Luft von höchstens
           *[cold] kalt, in Luft von mindestens
        } { DEGREES($extreme_c) }
       *[air] die Luft { $level ->
            [watch] ein wenig{" "}
            [alarm] deutlich{" "}
            [serious] viel{" "}
           *[other] { "" }
        }zu { $kind ->
            [warm] warm
           *[cold] kalt
        }, im Äußersten { DEGREES($extreme_c) }
    }. { $looks_like ->
        [unclear] Aus der Kurve nicht klar
       *[known] Nach der Kurve { WORD($looks_like, kind: "spell") }
    }: { $evidence }. Brut { $batch } war { TENTH($day_start) } Tage alt; ihre Eier erreichten etwa { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } bis { DEGREES($egg_extreme_high_c) }, in 8 von 10 Fällen).
spell_beside = { $event }. Brüter { $incubator }, ab { MINUTE($start) }, { $lasting }: er { $evidence }. Brut { $batch } war zu Beginn { TENTH($day_start) } Tage alt; ihre Eier hatten etwa { DEGREES($egg_extreme_c) } ({ DEGREES($egg_extreme_low_c) } bis { DEGREES($egg_extreme_high_c) }, in 8 von 10 Fällen).
spell_hole = Für { SHARE($gap_share) } dieser Zeit ist nichts aufgezeichnet: was da geschah, ist nicht bekannt.
heat_little = Zu wenig für den Hitzeschaden, den Versuche zeigen; tagelang über dem Bereich können Embryonen trotzdem langsamer oder matter werden.
heat_told = Hitze: { $heat_band ->
        [low] gering
        [watch] mittel
       *[high] groß
    }. Ihre schlimmsten 24 h entsprechen { TENTH($heat_dose_h) } h des Eies bei { DEGREES($dose_at_c) }, { WHOLE($share) } der Dosis, die in etwa diesem Alter den halben Schlupf kostete ({ EGGS($half_h) } h in Luft von { DEGREES($half_c) } an Tag { EGGS($half_day) }; { $source }). Das ordnet Störungen nach ihrer Hitze; es sagt nicht voraus, wie viele sterben.
heat_common = Verbreiteter Rat warnt vor { DEGREES($warned_c) } für 15 Minuten; in einem Versuch schadeten 24 h bei { DEGREES($warned_c) } an Tag 16 nicht sehr (Thompson, Wilson & Brown 1976). Nehmen Sie den Rat als Vorsicht, nicht als Urteil.
cold_unknown = Was sie kostete, ist nicht bekannt: nichts Brauchbares ist aufgezeichnet.
cold_cost = { $lost_hours ->
        [0] Sie kostete so gut wie keine Entwicklung.
       *[hours] Sie kostete etwa { TENTH($lost_hours) } h Entwicklung.
    }
cold_young = In den ersten Tagen liegt der Embryo gleich unter der Schale und kühlt schneller ab als das Ei im Ganzen (um { STEP($bench_k) } in 10 Minuten auf dem Tisch, Am. J. Physiol. 234:R183, 1978): nur kurz öffnen.
cold_below_10 = Die Eier waren { $lasting } unter { DEGREES($below_c) }; Embryonen von 17 Tagen leiden nach etwa 4 h davon.
cold_below_20 = Die Eier waren { $lasting } unter { DEGREES($below_c) }; Embryonen von 17 Tagen überstanden 24 h bei { DEGREES($well_c) } ohne Schaden, bei { DEGREES($ill_c) } nicht (Can. J. Anim. Sci. um 1970).

## Brüter und Thermometer

machine_nothing = Brüter { $incubator }: solange Eier darin waren, wurde nichts aufgezeichnet.
machine_steady = Brüter { $incubator }: { WHOLE($share_logged) } der Zeit mit Eiern ist aufgezeichnet; an gewöhnlichen Tagen im Mittel { DEGREES($mean_c) }, 8 von 10 Messungen innerhalb von { STEP($swing_c) }{ $off_set_point_c ->
        [none] { "" }
       *[off] , { SIGNED($off_set_point_c) } neben dem Sollwert
    }{ $day_night_c ->
        [none] { "" }
       *[apart] ; Tag minus Nacht { SIGNED($day_night_c) }
    }. Im Bereich { SHARE($share_in_band) } der aufgezeichneten Zeit, im Alarmbereich oder darüber { SHARE($share_alarm) }; { $opened ->
        [never] die Aufzeichnung zeigt kein Öffnen
        [seldom] nach der Aufzeichnung seltener als einmal im Monat geöffnet
       *[often] nach der Aufzeichnung etwa { TENTH($a_week) }-mal in der Woche geöffnet
    }.
machine_coarse = Bei { EGGS($step_minutes) } min zwischen den Messungen kann eine kurze Spitze fehlen, und bis zu { WHOLE($unseen_share) } davon käme in einem Hühnerei an.
probe_unknown = Brüter { $incubator }, Fühler { $probe }: nie geprüft, und nichts anderes sagt etwas über seinen Fehler.
probe_told = Brüter { $incubator }, Fühler { $probe }: { LIST($told) }.
probe_offset = eine Prüfung ergab eine Abweichung von { SIGNED($offset_c) }, die eingerechnet ist
probe_against = er zeigt { SIGNED($differs_c) } gegen Fühler { $other_probe }
probe_by_clock = die Schlupfzeiten von { $clock_batches ->
        [one] einer Brut
       *[other] { $clock_batches } Bruten
    } passen zu einem Fühler, der { $true ->
        [yes] richtig misst
       *[no] um { SIGNED($clock_bias_c) } abweicht
    }{ $clock_low_c ->
        [none] { "" }
       *[range] {" "}({ SIGNED($clock_low_c) } bis { SIGNED($clock_high_c) })
    }
probe_do_disagree = Prüfen Sie beide neben einem Fieberthermometer nahe { DEGREES($right_c) }.
probe_do_high = Prüfen Sie ihn: zeigt er zu viel an, waren die Eier kühler, als die Aufzeichnung sagt.
probe_do_low = Prüfen Sie ihn: zeigt er zu wenig an, waren die Eier wärmer, als die Aufzeichnung sagt.

## Die Uhr

clock_names = { $verdict ->
        [on_time] Geschlüpft in dem, was eine solche Vorhersage sagen kann
        [not_seen] Ohne Schlupfzeiten
       *[cannot_tell] Nicht zu beurteilen, weil die Aufzeichnung fehlt
    } ({ COUNT($batches) } von { $of }): { LIST($batches) }.
clock_no_batch = Bei keiner Brut lässt sich die Schlupfzeit beurteilen.
clock_not_expected = Brut { $batch }: kein erwarteter Schlupf, weil die Art oder die Zeit des Einlegens nicht bekannt ist.
clock_told = Brut { $batch }: die Mitte des Schlupfs war zu erwarten etwa { $by_day ->
        [yes] am { DATE($expected_at) }
       *[no] am { MINUTE($expected_at) }
    } (± { $half_h }; gewöhnlich Tag { TENTH($usual_day) }, { $storage_h ->
        [none] Lagerung nicht bekannt
       *[known] Lagerung { HOURS($storage_h) }
    }, { $temperature_h ->
        [none] Temperatur nicht bekannt
       *[known] Temperatur { HOURS($temperature_h) }
    }){ $came ->
        [not_seen] ; Schlupfzeiten sind nicht aufgeschrieben.
        [then] {" "}und kam dann auch
        [earlier] {" "}und kam { EGGS($hours) } h früher
       *[later] {" "}und kam { EGGS($hours) } h später
    }{ $verdict ->
        [not_seen] { "" }
        [cannot_tell] , aber nur { WHOLE($share_logged) } der Zeit sind aufgezeichnet: ob früh oder spät, lässt sich nicht sagen.
        [on_time] : im Rahmen dessen, was eine solche Vorhersage sagen kann.
       *[off] , mehr als der Zweifel der Vorhersage. Ein Fühler, der { STEP($probe_error_c) } zu { $reads ->
            [high] viel
           *[low] wenig
        } anzeigt, würde es allein erklären; ebenso eine falsche Zeit des Einlegens oder der Zuchtstamm.
    }
clock_earlier = Die Mitte eines Schlupfs ist { EGGS($before_h) } h vor dem üblichen Schlupftag der Hühner angesetzt, bei anderen im Verhältnis: bis zu diesem Tag ist das meiste eines guten Schlupfs da. Der Plan nennt den Tag selbst, auf den man vorbereitet sein soll.

## Wasser

water_told = Brut { $batch }: { SHARE($loss_share) } des Gewichts verloren bis Tag { EGGS($loss_day) }, { SHARE($projected_share) } beim Umlegen zu erwarten ({ SHARE($projected_low) } bis { SHARE($projected_high) }; Soll { WHOLE($target_low) } bis { WHOLE($target_high) } bis Tag { EGGS($transfer_day) }): { $verdict ->
        [on_target] im Soll
        [too_little] zu wenig
        [too_much] zu viel
       *[cannot_tell] lässt sich nicht sagen
    }.
water_from_shells = Brut { $batch }: nicht gewogen. Allein nach Schalen dieser Art und der Feuchte etwa { WHOLE($projected_share) } ({ WHOLE($projected_low) } bis { WHOLE($projected_high) }; Soll { WHOLE($target_low) } bis { WHOLE($target_high) } bis Tag { EGGS($transfer_day) }): wiegen Sie einige Eier, um es zu wissen.
water_next = Die Mitte des Solls trifft bei solchen Eiern von Anfang an: { WORD($next, kind: "humidity") }{ $next ->
        [possible] {" "}{ EGGS($rh_next_pct) } % Feuchte
       *[other] { "" }
    }{ $now ->
        [none] { "" }
       *[told] ; von jetzt an: { WORD($now, kind: "humidity") }{ $now ->
            [possible] {" "}{ EGGS($rh_now_pct) } % Feuchte
           *[other] { "" }
        }
    } (aufgezeichnet: { EGGS($rh_pct) } %).
humidity_possible = etwa
humidity_too_dry = trockenere Luft, als ein Brüter geben kann
humidity_too_damp = feuchtere Luft, als gut ist
water_roughly = Nicht gewogen, darum nur grob bekannt, nach Schalen ihrer Art: { LIST($batches) }.
water_not_known = Nicht gewogen, darum nicht bekannt: { LIST($batches) }.
water_weigh = Wiegen Sie eine Horde beim Einlegen und bei jedem Schieren: es dauert Minuten und sagt, welche Feuchte Ihre Eier brauchen.
water_why_no_species = Brut { $batch }: die Art oder die Zeit des Einlegens ist nicht bekannt.
water_why_no_humidity = Brut { $batch }: nicht gewogen und keine Feuchte aufgezeichnet.
water_why_namesakes = Brut { $batch }: welches Ei gewogen wurde, ist nicht gesagt.
water_why_no_living = Brut { $batch }: kein gewogenes Ei war lebend und heil.
water_why_one_egg = Nur ein Ei, und die Eier eines Stammes unterscheiden sich mehr, als das Soll weit ist.
water_why_reaches_in = Außerhalb des Solls, aber der Bereich reicht hinein.
water_why_too_wide = Im Soll, aber der Bereich ist mehr als doppelt so weit wie das Soll.
water_why_taken_off = Zwischen den Wägungen wurden Eier heruntergenommen: der Bereich berücksichtigt es.
water_why_heavy = { EGGS($set_g) } g je Ei sind weit mehr, als bei dieser Art üblich ist: blieb die Horde auf der Waage? Eine mitgewogene Horde lässt den Verlust zu klein erscheinen.

## Wie eine Störung heißt

stage_opening = Deckel oder Tür geöffnet
stage_drift = langsames Abdriften
stage_outage = Heizung ausgefallen (Strom oder Heizstab)
stage_overheating = Überhitzung
stage_sensor = eher Messfehler als wirkliche Luft
stage_loading = das Einlegen der Eier
stage_steady = ein Brüter, der tagelang neben seinem Bereich läuft
stage_unclear = aus der Kurve nicht klar
