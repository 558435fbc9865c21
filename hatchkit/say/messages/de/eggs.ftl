# Was aus den Eiern wurde: wo Zahlen, Zeilen und Tage einer Brut nicht zusammenpassen.

eggs_set_missing =
    .found = Brut { $batch }: die Zahl der eingelegten Eier fehlt
    .done = Die Brut bleibt aus den Anteilen heraus.
    .fix = Tragen Sie die eingelegten Eier ein (eggs_set).
culled_beyond_hatched =
    .found = Brut { $batch }: { $culled } von { $hatched } Küken ausgesondert, obwohl ausgesonderte zu den geschlüpften gehören
    .done = { $culled } gelten als geschlüpft und ausgesondert.
    .fix = Prüfen Sie die Zeile.
taken_out_twice =
    .found = Brut { $batch }: { $looks } Eier an den Schierterminen herausgenommen, aber { $total } in der Spalte removed
    .done = { $looks } wird genommen.
    .fix = Prüfen Sie die Zeile.
rows_beyond_set =
    .found = Brut { $batch }: { $told } Eizeilen mit Verbleib, aber { $set } eingelegte Eier
    .done = Die Brut bleibt aus den Anteilen heraus, bis eine der Zahlen berichtigt ist.
    .fix = Zählen Sie nach, was falsch ist: die eingelegten Eier oder was aus ihnen wurde.
counts_beyond_set =
    .found = Brut { $batch }: { $told } Eier in den Aufzeichnungen ({ WORDS($kinds, kind: "field") }: { LIST($eggs) }), aber { $set } eingelegt
    .done = Die Brut bleibt aus den Anteilen heraus, bis eine der Zahlen berichtigt ist.
    .fix = Zählen Sie nach, was falsch ist: die eingelegten Eier oder was aus ihnen wurde.
counts_beyond_rows =
    .found = Brut { $batch }: die Zahlen nennen { $told } Eier neben den { $rows } Eizeilen, aber nur { $left } sind übrig
    .done = Die Eizeilen gelten, { $left ->
        [0] und kein Ei ist übrig.
        [one] das andere Ei hat keinen bekannten Verbleib.
       *[other] die anderen { $left } Eier haben keinen bekannten Verbleib.
    }
    .fix = Prüfen Sie die Zeile.
opened_two_ways =
    .found = Brut { $batch }: die geöffneten Eier und die Steckenbleiber lassen sich auf mehr als eine Art lesen
    .done = { $way ->
        [unhatched] dead_in_shell gilt als alle nicht geschlüpften Eier, die unbefruchteten darunter
        [without_early] dead_in_shell gilt ohne die früh abgestorbenen
        [apart] dead_in_shell gilt als getrennt von den geöffneten Eiern gezählt
       *[clears] Die unbefruchteten und früh abgestorbenen unter den geöffneten Eiern gelten als geöffnete klare Eier
    }, denn so geht die Rechnung auf.
    .fix = Wenn das falsch ist, berichtigen Sie die Zahlen.
eggs_unexplained =
    .found = Brut { $batch }: die Aufzeichnungen erklären { $told } von { $set } eingelegten Eiern
    .done = { $lost ->
        [one] Der Verbleib eines Eies ist nicht bekannt.
       *[other] Der Verbleib von { $lost } Eiern ist nicht bekannt.
    }
    .fix = Suchen Sie die fehlenden Eier: klare, zerbrochene, nicht geschlüpfte.
hatch_not_counted =
    .found = Brut { $batch }: für { $eggs ->
        [one] ein Ei
       *[other] { $eggs } Eier
    } ist noch kein Schlupf gezählt
    .done = Die Brut bleibt aus den Anteilen heraus, bis sie fertig ist.
    .fix = Tragen Sie nach dem Schlupf die geschlüpften Küken ein (hatched).
rows_against_counts =
    .found = Brut { $batch }: { READINGS($kinds) }: { LIST($counts) } nach der Zahl, { LIST($rows) } nach den Eizeilen
    .done = Die Eizeilen gelten.
    .fix = Berichtigen Sie die Zahl oder die Eizeilen.
egg_outcome_differs =
    .found = Brut { $batch }, Ei { $egg }: { WORD($look, kind: "stage") }: { WORD($seen, kind: "field") }, am Ende aber: { WORD($outcome, kind: "fate") }
    .done = Das Ende gilt.
    .fix = Prüfen Sie die Zeile dieses Eies.
egg_seen_alive =
    .found = Brut { $batch }, Ei { $egg }: an Tag { $day } lebend gesehen, am Ende aber: { WORD($outcome, kind: "fate") }
    .done = Gilt als abgestorben, denn ein lebender Embryo wurde gesehen.
    .fix = Prüfen Sie die Zeile dieses Eies.
egg_older_than_found =
    .found = Brut { $batch }, Ei { $egg }: sah aus wie Tag { $stage }, wurde aber bis Tag { $by } tot gefunden
    .done = Das Aussehen des Embryos zählt nicht: gestorben zwischen Tag { $after } und Tag { $by }.
    .fix = Prüfen Sie die Zeile dieses Eies.
egg_younger_than_alive =
    .found = Brut { $batch }, Ei { $egg }: sah aus wie Tag { $stage }, war aber an Tag { $alive } als lebend vermerkt
    .done = Eines davon ist falsch: der Zeitraum umfasst beides, Tag { $after } bis Tag { $by }.
    .fix = Prüfen Sie die Zeile dieses Eies.
look_day_taken =
    .found = Brut { $batch }: Zahlen ohne Datum: { WORD($look, kind: "stage") }
    .done = Tag { $day } wird genommen, der übliche.
    .fix = Tragen Sie das Datum dieses Schiertermins ein.
look_before_setting =
    .found = Brut { $batch }: vor oder beim Einlegen datiert: { WORDS($looks, kind: "stage") }
    .done = Die Zahlen bleiben, der übliche Tag wird genommen.
    .fix = Prüfen Sie set_at und das Datum des Schiertermins.
off_before_look =
    .found = Brut { $batch }: an Tag { TENTH($off) } abgeräumt, vor dem letzten Schiertermin an Tag { TENTH($last) }
    .done = Tag { $day } wird als Ende des Schlupfs genommen.
    .fix = Prüfen Sie die Daten.

fate_hatched = geschlüpft
fate_culled = ausgesondert
fate_clear = klar
fate_infertile = unbefruchtet
fate_dead = abgestorben
fate_pipped_dead = angepickt und gestorben
fate_removed = herausgenommen

## Aus den Anteilen herausgelassen, und was nicht gezählt wurde

left_out_rows = { $batch } bleibt aus den Anteilen heraus: { $told } Eizeilen mit Verbleib, aber { $set } eingelegte Eier.
left_out_counts = { $batch } bleibt aus den Anteilen heraus: { $told } Eier in den Aufzeichnungen, aber { $set } eingelegt.
left_out_nothing = { $batch } bleibt aus den Anteilen heraus: was aus den Eiern wurde, ist nicht aufgeschrieben.
left_out_chicks = { $batch } bleibt aus den Anteilen heraus: die Küken sind nicht gezählt.
left_out_hatch = { $batch } bleibt aus den Anteilen heraus: der Schlupf ist nicht gezählt.
left_out_set = { $batch } bleibt aus den Anteilen heraus: die Zahl der eingelegten Eier fehlt.
clears_left_uncounted = Klare Eier wurden nicht gezählt: { LIST($batches, most: 12) } ({ EGGS($eggs) ->
        [one] ein Ei
       *[other] { EGGS($eggs) } Eier
    }). Wie viele dieser Eier einen Embryo enthielten, ist nicht bekannt; die Anteile an den nicht klaren Eiern lassen sie weg.
lost_uncounted = Nicht bis zum Ende gezählt: { WORDS($stages, kind: "loss") } ({ $all ->
        [yes] alle { $number } Bruten
       *[no] { LIST($batches, most: 12) }
    }). Davon ging mindestens so viel verloren; ein Bereich wird nicht genannt.

## Pech, Sterbealter, Platz und Verlauf, in mehr Worten

luck_own = Vergleiche mit Ihren anderen Bruten: { $comparisons }. Für sich selten (1 von 20): { $rare }, wo der Zufall { $by_luck ->
        [0] weniger als 1
       *[other] bis zu etwa { $by_luck }
    } gibt.
luck_near = Für sich selten, unter so vielen Vergleichen aber nicht ungewöhnlich genannt: { LIST($near) }.
luck_near_one = { $batch }, { $eggs } von { EGGS($out_of) } { WORD($stage, kind: "loss") } ({ $unusual_from ->
        [none] keine Zahl hätte genügt, bei so wenigen anderen und so verschiedenen Bruten
       *[eggs] { EGGS($unusual_from) } oder { $stage ->
            [hatched] weniger
           *[other] mehr
        } hätten genügt
    })
luck_wide = { $number ->
        [one] Eine Brut hat
       *[other] { $number } Bruten haben
    } weniger als { $fewest } andere derselben Art neben sich: der zu erwartende Bereich ist weit, und wenig lässt sich ungewöhnlich nennen.
luck_uncounted = Nicht verglichen, weil dies oder die klaren Eier nicht gezählt wurden: { WORDS($stages, kind: "loss") } in { LIST($batches, most: 12) }.
luck_published = Vergleiche mit veröffentlichten Werten ({ LIST($levels) }): { $comparisons }. { $number ->
        [0] Keiner ist ungewöhnlich, wenn man ihre Zahl berücksichtigt.
       *[other] Ungewöhnlich: { LIST($unusual) }.
    }
luck_published_one = { $batch }, { $eggs } { WORD($stage, kind: "loss") }, zu erwarten sind { EGGS($low) } bis { EGGS($high) } (durch Zufall 1 von { $one_in })
luck_not_why = Ungewöhnlich heißt: kaum Zufall. Es sagt nicht, warum.
ages_none = Noch kein Ei mit bekanntem Ende, darum lässt sich zum Sterbealter nichts sagen.
ages_alive = { WORD($species, kind: "species") }: keiner von { EGGS($eggs) } lebenden Embryonen in { $batches ->
        [one] einer Brut
       *[other] { $batches } Bruten
    } starb; bis zu { SHARE($most) } Verlust würden noch dazu passen.
ages_died = { WORD($species, kind: "species") }: { EGGS($deaths) } von { EGGS($eggs) } lebenden Embryonen in { $batches ->
        [one] einer Brut
       *[other] { $batches } Bruten
    } starben, { SHARE($share) } (95-%-Band { SHARE($low) } bis { SHARE($high) }){ $batches ->
        [one] ; bei nur einer Brut weiß das Band nichts vom Unterschied zwischen Bruten.
       *[other] .
    }
ages_removed = { EGGS($removed) ->
        [one] Ein Ei wurde
       *[other] { EGGS($removed) } Eier wurden
    } unterwegs lebend herausgenommen; das sagt nur etwas über die Tage davor.
ages_unaccounted = Weggelassen: { EGGS($unaccounted) ->
        [one] ein Ei mit unbekanntem Verbleib; wäre es abgestorben, betrüge der Verlust { SHARE($most) }.
       *[other] { EGGS($unaccounted) } Eier mit unbekanntem Verbleib; wären alle abgestorben, betrüge der Verlust { SHARE($most) }.
    }
ages_risk = Das höchste tägliche Risiko, das zu sehen war: { SHARE($daily_low) } bis { SHARE($daily_high) } am Tag (95-%-Band { SHARE($low) } bis { SHARE($high) }), zwischen Tag { EGGS($after) } und Tag { EGGS($by) }{ $alone ->
        [yes] .
       *[no] ; andere Zeiträume können ebenso hoch liegen.
    }
ages_wide = { LIST($spans) }: darin sagen die Schiertermine nicht, an welchem Tag sie starben.
ages_span = Tag { TENTH($after) } bis { TENTH($by) }
ages_method = Tag 0 ist die Stunde des Einlegens. Nur ungefähr bekannte Todesfälle sind dort eingeordnet, wo die besser bekannten liegen. Klare Eier zählen nicht mit: einige von ihnen starben in den ersten Tagen.
place_counts = { $deaths } abgestorbene unter { $eggs } Eiern auf { $trays ->
        [one] einer Horde
       *[other] { $trays } Horden
    }: { EGGS($pairs) } Paare von Nachbarn ({ TENTH($pairs_expected) } zu erwarten, wenn der Platz keine Rolle spielt), { SHARE($edge) } der abgestorbenen am Rand ({ SHARE($edge_expected) } zu erwarten). { $answer ->
        [few] Bei so wenigen Todesfällen wäre kein Muster vom Zufall zu unterscheiden gewesen.
        [pattern] Der Zufall allein tut so viel in { SHARE($chance) } der Fälle; oft liegen auch Eier einer Henne beisammen, sehen Sie nach beidem.
       *[no_sign] Ein so starkes Muster kommt durch Zufall in { SHARE($chance) } der Fälle vor.
    }
course_centre = { WORD($stage, kind: "stage") }, { WORD($species, kind: "species") }: { SHARE($centre) } { $of ->
        [set] der eingelegten Eier
       *[fertile] der nicht klaren Eier
    } in { $batches ->
        [one] einer Brut
       *[other] { $batches } Bruten
    }. { $limits ->
        [none] Diese wenigen Bruten sind so verschieden, dass sich keine Grenzen ziehen lassen.
        [outside] Außerhalb der Grenzen: { LIST($outside) }; einen Blick wert, kein Beweis: wo Bruten sehr verschieden sind, haben 3 von 10 gewöhnlichen Saisons eine solche.
       *[inside] Keine Brut liegt außerhalb der Grenzen.
    }
course_provisional = Die Grenzen sind vorläufig: weniger als { $fewest } Bruten.
course_uncounted = Weggelassen, weil dies dort nicht gezählt wurde: { LIST($batches, most: 12) }.
course_others = Nicht in diesem Bild: { LIST($kinds) }.
course_other = { WORD($species, kind: "species") } ({ $batches ->
        [one] eine Brut
       *[other] { $batches } Bruten
    })

level_named = { WORD($level, kind: "norm") }
norm_own = Ihr eigener Wert
norm_heavy_breeders = Masteltern-Herden, Butcher & Nilipour
norm_barnett_intact = Bruteier ohne Sprünge aus einer Brüterei, Barnett et al. 2004
norm_small_incubator = Erfahrungswert für Heimbrüter
norm_pheasant_8_hens = Fasane, 8 Hennen je Hahn, Deeming & Wadland 2001
norm_pheasant_12_hens = Fasane, 12 Hennen je Hahn, Deeming & Wadland 2001
norm_quail_stored_14_days = Wachteleier, 14 Tage gelagert, S. Afr. J. Anim. Sci. 2019
norm_partridge_farm = Rothühner, eine Studie mit 150 Eiern
norm_guinea_farm = Perlhühner, Araujo et al. 2019
norm_goose_warmed = Gänseeier, 9 Tage gelagert und täglich erwärmt, ein Versuch
norm_turkey_stored_17_days = Puteneier, 17 Tage gelagert, Ann. Anim. Sci. 17
norm_turkey_usa_1997 = Puten-Brütereien der USA 1997, Fachpresse
