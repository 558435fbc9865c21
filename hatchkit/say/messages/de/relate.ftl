# Verluste und Temperatur: das Urteil und seine Gründe, für alle, die weiter sehen wollen.


## The verdict

relate_clear_sign = Ein klares Anzeichen.
relate_some_sign = Ein gewisses Anzeichen.
relate_no_sign = Kein Anzeichen, und eine Verdoppelung hätte man gesehen.
relate_cannot_tell = Lässt sich nicht sagen: eine Verdoppelung wäre in { $missed } von 10 Fällen übersehen worden.
relate_not_apart = Nicht davon zu trennen: { WORD($factor, kind: "factor") }.
relate_why_no_window = Lässt sich nicht sagen: von keinem Zeitraum sind Eier, abgestorbene und Länge alle bekannt.
relate_why_not_logged = Lässt sich nicht sagen: kein Zeitraum irgendeiner Brut ist aufgezeichnet.
relate_why_one_batch = Lässt sich nicht sagen: nur eine Brut hat eine Aufzeichnung, und nichts steht zum Vergleich daneben.
relate_why_no_death = Lässt sich nicht sagen: in keinem aufgezeichneten Zeitraum starb ein Embryo.
relate_why_all_died = Lässt sich nicht sagen: alle Embryonen starben, getroffen oder nicht.
relate_why_no_excursion = Lässt sich nicht sagen: keine warme oder kalte Phase, die zählt, traf eine Brut.
relate_why_same_dose = Lässt sich nicht sagen: alle Bruten traf dieselbe Dosis.
relate_why_uncounted = Lässt sich nicht sagen: { $windows ->
        [one] der einzige Zeitraum mit einer Phase ist
       *[other] alle { $windows } Zeiträume mit einer Phase sind
    } nicht zu gebrauchen, weil { $not_counted ->
        [yes] lebende oder abgestorbene nicht gezählt wurden
       *[no] die Zahlen einander widersprechen
    } ({ LIST($batches) }).

## Its size and how sure it is

relate_size = In { $exposed ->
        [one] der einen getroffenen
       *[other] den { $exposed } getroffenen
    } von { $batches } Bruten starben Embryonen { $hazard_ratio ->
        [none] unbekannt oft
        [21] über 20
       *[ratio] { PLAIN($hazard_ratio) }
    }-mal so häufig wie in den anderen (95-%-Bereich { $low ->
        [none] unbekannt
        [21] über 20
       *[ratio] { PLAIN($low) }
    } bis { $high ->
        [none] unbekannt
        [21] über 20
       *[ratio] { PLAIN($high) }
    }), bei der üblichen Dosis der getroffenen Zeiträume.
relate_winner = In so kleinen Aufzeichnungen zeigt sich nur ein großer Unterschied, darum ist der wahre wohl kleiner: trauen Sie der unteren Hälfte des Bereichs.
relate_no_arrangement = Die Phasen lassen sich nicht anders auf diese Bruten verteilen, darum ist der Zufall nicht zu wägen.
relate_chance = { $turned ->
        [yes] Wird die Aufzeichnung gegen die Bruten verschoben
       *[no] Werden die Phasen den Bruten zugelost
    }, tut der Zufall allein so viel in { $many ->
        [0] weniger als 1
       *[other] { $many }
    } von { PLAIN($out_of) } Fällen.
relate_smallest = So wenige Bruten hätten nicht weniger als { $many ->
        [0] 1
       *[other] { $many }
    } von { PLAIN($out_of) } ergeben können.
relate_drawn = Wird jede Brut neu ausgewürfelt, mit eigenem Glück, Brüter und Jahre auf eigener Höhe, tut er es in { $many ->
        [0] weniger als 1
       *[other] { $many }
    } von { PLAIN($out_of) } Fällen.
relate_less_than_clear = Das ist weniger, als die Regel für ein klares Anzeichen verlangt.
relate_harm_not_size = Dass es Schaden gibt, ist ein klares Anzeichen; wie viel, nicht: der Bereich reicht bis zu keinem.
relate_would_show = Eine { $ratio ->
        [none] unbekannt
        [21] über 20
       *[ratio] { PLAIN($ratio) }
    }-mal so hohe Rate hätte sich in 8 von 10 solchen Saisons gezeigt.
relate_shows_from = { $ratio ->
        [none] Auf Aufzeichnungen dieser Größe ist selbst bei sehr großem Schaden kein Verlass
       *[ratio] Aufzeichnungen dieser Größe zeigen einen Schaden in 8 von 10 Saisons nur, wo die Rate etwa { $ratio ->
            [21] über 20
           *[other] { PLAIN($ratio) }
        }-mal so hoch ist
    }{ $why ->
        [levels] , weil die getroffenen Bruten und die anderen in verschiedenen Brütern oder Jahren liegen
        [few_exposed] , weil so wenige Bruten getroffen wurden
        [few_deaths] , weil überhaupt so wenige Embryonen starben
        [few_batches] , weil es so wenige Bruten sind
       *[none] { "" }
    }.
relate_excess = In den getroffenen Zeiträumen starben { EGGS($observed) }; ohne Phase wären es vermutlich { EGGS($expected) } gewesen: { EGGS($excess) } mehr (95-%-Bereich { EGGS($excess_low) } bis { EGGS($excess_high) }; unter null heißt weniger), am Ende etwa { EGGS($chicks_lost) } verlorene Küken ({ EGGS($chicks_low) } bis { EGGS($chicks_high) }).

## What went with it

relate_one_sided = Alle getroffenen Bruten haben dies gemeinsam, und keine andere: { WORD($factor, kind: "factor") } ({ LIST($hit) }). Das vergleicht dies und kann nicht sagen, was die Temperatur tat.
relate_nearly = Fast alle Bruten von diesen wurden getroffen und die anderen nicht: { WORD($factor, kind: "factor") } ({ LIST($hit) }); zu wenige lassen sich innerhalb vergleichen.
relate_exact = Die getroffenen Bruten liegen hierin alle auf einer Seite ({ WORDS($hit, kind: "side") }): { WORD($factor, kind: "factor") }. Was sich damit änderte, ist von der Temperatur nicht zu trennen.
relate_together = Dies geht mit den Phasen zusammen ({ WHOLE($explained) } gemeinsam): { WORD($factor, kind: "factor") }; ein Teil eines Unterschieds kann davon kommen.
relate_in_part = Dies geht zum Teil mit den Phasen zusammen ({ WHOLE($explained) } gemeinsam): { WORD($factor, kind: "factor") }; ein Teil eines Unterschieds kann davon kommen.
side_more = später, mehr oder älter
side_fewer = früher, weniger oder jünger
factor_incubator = der Brüter
factor_species = die Art
factor_flock = der Zuchtstamm
factor_season = die Saison
factor_keeper = der Halter
factor_stored_days = Tage der Lagerung
factor_flock_age_weeks = Alter des Zuchtstamms
factor_start = Zeit in der Saison
relate_allowed = Berücksichtigt: { WORDS($factors, kind: "factor") }.
relate_not_allowed = Zu wenige Aufzeichnungen, um dies zu berücksichtigen: { WORDS($factors, kind: "factor") }.
relate_left_out = { $windows ->
        [one] Ein Zeitraum bleibt
       *[other] { $windows } Zeiträume bleiben
    } weg, weil { $why ->
        [not_counted] dort lebende oder abgestorbene nicht gezählt wurden.
        [twice] derselbe Zeitraum zweimal da ist.
        [no_length] die Länge nicht bekannt ist.
        [too_many_dead] mehr starben, als zu Beginn lebten.
       *[no_eggs] zu Beginn kein Ei lebte.
    }

## The question as it was asked, and its limits

relate_asked = Vor dem Hinsehen gefragt: verloren Zeiträume zwischen zwei Schierterminen, in denen Eier zu warm oder zu kalt waren, mehr Embryonen als die anderen?
relate_one_exposed = Nur eine Brut wurde getroffen, darum gibt es keine Prüfung der Phase; sehen Sie sich diese Brut für sich an und vergleichen Sie sie mit den anderen.
relate_few_batches = Mit { $batches ->
        [one] einer Brut
       *[other] { $batches } Bruten
    } ist das eine Beschreibung, keine Prüfung.
relate_few_deaths = Mit { EGGS($deaths) ->
        [one] einem Todesfall
       *[other] { EGGS($deaths) } Todesfällen
    } ist das eine Beschreibung, keine Prüfung.
relate_unlogged = Für { $unknown } von { $windows } Zeiträumen ist zu wenig aufgezeichnet, um die Dosis zu kennen: weder als getroffen noch als verschont gezählt.
relate_after = Neben der Frage angesehen: { EGGS($died) } Embryonen starben im Zeitraum gleich nach einem mit einer Phase ({ LIST($where) }{ $others ->
        [0] { "" }
       *[other] , und { $others } weitere
    }), wo Bruten ohne Phase { TENTH($expected) } verlören; so viele oder mehr kommen durch Zufall in { $many ->
        [0] weniger als 1
       *[other] { $many }
    } von { PLAIN($out_of) } Fällen. Kurz vor dem Schieren getötete Embryonen können dort als lebend durchgehen und erst beim nächsten gefunden werden. Die gestellte Frage zählt sie als Verluste ohne Phase und kann solchen Schaden übersehen; das Urteil bleibt bei der gestellten Frage.
relate_after_one = { EGGS($died) } von { EGGS($at_risk) } in { $batch }
relate_later = Neben der Frage angesehen: Bruten, die im Zeitraum vor diesem Termin getroffen wurden, verloren von da bis zum Ende mehr, in dem Zeitraum allein aber nicht: { WORDS($looks, kind: "stage") }. Todesfälle können einer Phase spät folgen.
relate_not_the_cause = Verluste, die mit einer Phase zusammengehen, passen zu einem Schaden durch sie. Dass sie die Ursache war und nicht etwas, das mit ihr kam, können Aufzeichnungen dieser Art nicht beweisen.
