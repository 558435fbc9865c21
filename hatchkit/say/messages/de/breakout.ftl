# Die Anleitung zum Öffnen: Bilder geöffneter Eier, was man sieht, was es heißt, worauf es hinweist.

breakout_days = { $one_day ->
        [yes] { EGGS($low) }
       *[no] { EGGS($low) } bis { EGGS($high) }
    }

breakout_look_egg_clear = Nichts gewachsen
breakout_see_egg_clear = Dotter ganz; ein dichter weißer Fleck von 1-2 mm
breakout_means_egg_clear = Unbefruchtet, wenn beim ersten Schieren geöffnet. Nach Wochen in der Wärme sieht ein Ei, das in den ersten zwei Tagen abstarb, ebenso aus: dann ist es unbefruchtet oder sehr früh abgestorben, und niemand kann sagen, welches
breakout_points_to_egg_clear = Bestand: Hähne, Paarung, Futter

breakout_look_egg_ring = Ring ohne Blut
breakout_see_egg_ring = Ein blasser Ring von 3-4 mm mit hellerer Mitte
breakout_means_egg_ring = Befruchtet, vor oder bald nach dem Einlegen stehen geblieben. Nur in den ersten Tagen zu sehen: nach Wochen in der Wärme ist es von einem Ei, in dem nichts wuchs, nicht zu unterscheiden
breakout_points_to_egg_ring = Lagerung, Umgang, zu warmer oder zu kalter Anfang

breakout_look_egg_blood_ring = Blutring oder Blutfäden
breakout_see_egg_blood_ring = Blutgefäße oder ein Ring aus Blut, kein Auge zu sehen
breakout_means_egg_blood_ring = In den ersten Tagen abgestorben, bevor das Auge zu sehen ist
breakout_points_to_egg_blood_ring = Lagerung, Wärme der ersten Tage, Umgang

breakout_look_embryo_eye = Schwarzes Auge
breakout_see_embryo_eye = Kleiner gekrümmter Körper mit schwarzem Auge; gegen Ende sind Zehen und Finger zu sehen, keine Federn
breakout_means_embryo_eye = An einem dieser Tage abgestorben
breakout_points_to_embryo_eye = Wärme, Wenden, Futter der Eltern

breakout_look_embryo_bird = Sieht wie ein Vogel aus
breakout_see_embryo_bird = Schnabel und Zehen ausgebildet, Haut nackt oder mit Federanlagen
breakout_means_embryo_bird = An einem dieser Tage abgestorben
breakout_points_to_embryo_bird = Wärme, Keime, Futter der Eltern

breakout_look_embryo_down = Erster Flaum
breakout_see_embryo_down = Dünner Flaum, Schuppen und Krallen beginnen; Kopf noch nicht am stumpfen Ende
breakout_means_embryo_down = An einem dieser Tage abgestorben
breakout_points_to_embryo_down = Wärme, Luft, Keime

breakout_look_embryo_late = Voller Flaum, Dotter außen
breakout_see_embryo_late = Überall befiedert, Dottersack noch außerhalb des Bauchs
breakout_means_embryo_late = An einem dieser Tage abgestorben
breakout_points_to_embryo_late = Wärme, Feuchte, Luft, Wenden

breakout_look_embryo_yolk_half = Dotter halb eingezogen
breakout_see_embryo_yolk_half = Füllt das Ei bis auf die Luftkammer; Dottersack halb eingezogen
breakout_means_embryo_yolk_half = Etwa zwei Tage vor dem Schlupf abgestorben
breakout_points_to_embryo_yolk_half = Feuchte, Lage, Luft beim Schlupf

breakout_look_embryo_yolk_in = Dotter eingezogen, nicht angepickt
breakout_see_embryo_yolk_in = Dottersack eingezogen, Schnabel vielleicht durch die innere Haut in der Luftkammer
breakout_means_embryo_yolk_in = Etwa einen Tag vor dem Schlupf abgestorben
breakout_points_to_embryo_yolk_in = Lage, Feuchte, Luft, Kälte beim Schlupf

breakout_look_embryo_pip = Schale aufgebrochen
breakout_see_embryo_pip = Loch in der Schale, Küken tot
breakout_means_embryo_pip = Angepickt und abgestorben
breakout_points_to_embryo_pip = Feuchte und Luft beim Schlupf, geöffneter Deckel

breakout_look_lie_right = Richtig: Kopf unter dem rechten Flügel
breakout_see_lie_right = Schnabel im stumpfen Ende, Kopf unter dem rechten Flügel, zur Luftkammer gerichtet
breakout_means_lie_right = So soll es liegen
breakout_points_to_lie_right = nichts

breakout_look_lie_thighs = Kopf zwischen den Schenkeln
breakout_see_lie_thighs = Kopf unten zwischen den Beinen
breakout_means_lie_thighs = Liegt falsch (oder starb, bevor es sich drehte, in der Woche vor dem Schlupf)
breakout_points_to_lie_thighs = Wärme gegen Ende, oder einfach ein früherer Tod

breakout_look_lie_small_end = Kopf im spitzen Ende
breakout_see_lie_small_end = Kopf von der Luftkammer weg
breakout_means_lie_small_end = Liegt falsch
breakout_points_to_lie_small_end = Eier mit der Spitze nach oben eingelegt, Wenden

breakout_look_lie_left = Kopf unter dem linken Flügel
breakout_see_lie_left = Kopf im stumpfen Ende, aber unter dem linken Flügel
breakout_means_lie_left = Liegt falsch
breakout_points_to_lie_left = Wärme, Wenden, Futter der Eltern

breakout_look_lie_away = Schnabel von der Luftkammer weg
breakout_see_lie_away = Kopf unter dem rechten Flügel, aber von der Luftkammer abgewandt
breakout_means_lie_away = Liegt falsch
breakout_points_to_lie_away = Wenden, Winkel des Eies

breakout_look_lie_feet = Füße über dem Kopf
breakout_see_lie_feet = Ein Fuß oder beide über dem Kopf
breakout_means_lie_feet = Liegt falsch
breakout_points_to_lie_feet = nicht gut bekannt

breakout_look_lie_above = Schnabel über dem Flügel
breakout_see_lie_above = Kopf auf, nicht unter dem rechten Flügel
breakout_means_lie_above = Liegt falsch (viele schlüpfen trotzdem)
breakout_points_to_lie_above = oft nichts

breakout_look_lie_across = Quer im Ei
breakout_see_lie_across = Liegt quer, der Kopf seitlich an der Schale
breakout_means_lie_across = Liegt falsch
breakout_points_to_lie_across = nicht gut bekannt; kleine Embryonen

breakout_look_sign_wet = Nass und geschwollen
breakout_see_sign_wet = Viel Flüssigkeit, kleine Luftkammer, geschwollener Nacken
breakout_means_sign_wet = Zu wenig Wasser verloren
breakout_points_to_sign_wet = zu feucht während der Brut

breakout_look_sign_dry = Trocken und verklebt
breakout_see_sign_dry = Haut trocken und straff, Flaum an der Schale verklebt, große Luftkammer
breakout_means_sign_dry = Zu viel Wasser verloren, oder beim Schlupf zu trocken
breakout_points_to_sign_dry = zu trocken während der Brut oder beim Schlupf

breakout_look_sign_rotten = Fauliger Geruch
breakout_see_sign_rotten = Grün, schwarz oder schäumend; es kann platzen
breakout_means_sign_rotten = Keime im Ei: nicht öffnen, geschlossen wegwerfen
breakout_points_to_sign_rotten = Schmutz, Waschen, Risse
