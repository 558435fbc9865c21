# Ein geteilter Versuch: sein Plan, und was er zeigte.

trial_arms = Ein Versuch vergleicht zwei Arten: nennen Sie beide, und geben Sie ihnen verschiedene Namen.
trial_outcome = Nach { $outcome } kann ein Versuch nicht fragen; er kann fragen nach { LIST($known) }.
trial_difference = Ein Unterschied von { $difference } lässt sich nicht planen: geben Sie einen Anteil von 0.01 bis 0.6 an, etwa 0.1 für zehn von hundert Eiern.
trial_eggs = { $eggs } Eier je Einlage lassen sich nicht teilen: geben Sie 4 oder mehr an.
trial_blocks = Die Eier der Hennen oder Stämme ergeben zusammen { $sum }, und die Einlage hat { $eggs }: bringen Sie beides in Übereinstimmung.
trial_block = „{ $text }“ ist keine Henne und kein Stamm mit Eierzahl: schreiben Sie es wie "Henne 4=6".
trial_columns = Dem Blatt fehlen { LIST($names) }: lassen Sie die Überschriften, wie sie waren.
trial_folder = { $path } enthält schon etwas: nennen Sie für den Versuch einen neuen oder leeren Ordner.
trial_no_plan = In { $path } gibt es keinen Plan eines Versuchs (trial.toml).
trial_bad_plan = Der Plan { $path } kann nicht gelesen werden: { $why }.
trial_no_sheet = In { $path } gibt es kein Blatt mit set, egg und result.

trial_plan = Geteilter Versuch: „{ $usual_way }“ gegen „{ $new_way }“, beurteilt nach: { WORD($outcome, kind: "outcome") }. { $sets ->
        [one] Eine Einlage
       *[other] { $sets } Einlagen
    } mit { EGGS($eggs) } Eiern, je die Hälfte auf jede Art, zugelost{ $blocks ->
        [0] { "" }
        [1] { "" }
       *[other] { " " }innerhalb jeder von { $blocks } Hennen oder Stämmen
    }.
trial_plan_eggs = Von { SHARE($usual) } aus, wie hier üblich, verlangt ein Unterschied von { SHARE($difference) } { EGGS($needed) } Eier auf jede Art; dieser Plan hat { EGGS($each) } und würde ihn in { TENTH($power) } von 10 Versuchen zeigen.
trial_plan_short = Das ist zu wenig, um sich darauf zu verlassen: mehr Einlagen, oder ein größerer Unterschied.
trial_plan_rules = Beide Arten müssen in einem Brüter liegen oder von Einlage zu Einlage den Brüter wechseln; wer schiert, sollte nicht wissen, welches Ei welches ist. Schreiben Sie für jedes Ei hatched (geschlüpft), dead (abgestorben), clear (klar), pipped (angepickt) oder out (herausgenommen) in die Spalte Result; lassen Sie Arm, wie es ist. Was zählt, wurde vor dem ersten Ei festgelegt: wenn alle Einlagen fertig sind, rufen Sie hatchkit trial mit dem Ordner auf.

trial_result = { $verdict ->
        [better] „{ $new_way }“ war besser als „{ $usual_way }“
        [worse] „{ $new_way }“ war schlechter als „{ $usual_way }“
        [too_few] Es liegen zu wenige Ergebnisse vor, um etwas zu sagen
       *[not_told] Zwischen „{ $new_way }“ und „{ $usual_way }“ lässt sich kein Unterschied feststellen
    }.
trial_counts = { WORD($outcome, kind: "outcome") }: { $new_good } von { $new_eggs } ({ SHARE($new_share) }) mit „{ $new_way }“, { $usual_good } von { $usual_eggs } ({ SHARE($usual_share) }) mit „{ $usual_way }“.
trial_size = Einlage für Einlage ist der Unterschied { TENTH($difference) } Prozentpunkte (95-%-Bereich { TENTH($low) } bis { TENTH($high) }); ein so großer kommt allein durch das Los in { TENTH($chance) } von 100 Verlosungen zustande.
trial_missed = Der Plan hätte einen Unterschied von { SHARE($planned) } in { TENTH($power) } von 10 Versuchen gezeigt; ein kleinerer kann da sein.
trial_left = Eier ohne Ergebnis: { $missing }; Ergebnisse, die nicht gelesen werden konnten: { $unread }; Eier, die zur anderen Art kamen: { $moved } (sie zählen dort, wohin das Los sie gelegt hatte).
trial_plan_file = Der Plan eines geteilten Versuchs, gemacht, bevor das erste Ei eingelegt wurde: hatchkit trial urteilt danach.
