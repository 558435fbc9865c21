# Vorsicht: was jede Seite und jedes Blatt zeigt.
take_care = Vorsicht
caution_machine_1 = Netzstrom und Wasser: ziehen Sie den Stecker, bevor Sie den Brüter füllen, leeren oder reinigen, halten Sie Stecker und Kabel von nassen Flächen fern, und betreiben Sie ihn an einer Steckdose mit Fehlerstromschutzschalter.
caution_machine_2 = Bei Stromausfall keine offene Flamme in der Nähe eines Brüters: viele sind aus Schaumstoff, der brennt. Ein geschlossener Deckel und Decken halten die Wärme länger, als man denkt.
caution_opening_eggs_1 = Schieren Sie jedes nicht geschlüpfte Ei, bevor Sie es öffnen, und behandeln Sie es als lebend, bis Sie gesehen haben, dass es das nicht ist.
caution_opening_eggs_2 = Faule Eier platzen. Öffnen Sie Eier im Freien oder an einem gut gelüfteten Ort ohne Zug in Ihre Richtung, in einer Schale oder Tüte, mit Handschuhen und Augenschutz und fern von Lebensmitteln; nie schütteln oder erwärmen. Halten Sie Kinder und Menschen mit schwacher Abwehr fern.
caution_opening_eggs_3 = Waschen Sie nach Eiern, Vögeln oder ihrem Zubehör die Hände mit Seife: auch gesund aussehende Vögel und saubere Eier können Salmonellen tragen.
caution_killing_1 = Embryonen können gegen Ende der Brut Schmerz empfinden. Einen Embryo, ein Küken oder ein lebend angepicktes Ei zu töten ist Sache geübter Hände, auf eine Weise, die das Recht Ihres Landes erlaubt; fragen Sie den Tierarzt. hatchkit zeigt den strengsten veröffentlichten Tag, ab dem Sorgfalt geboten ist (zwei Drittel der Brutdauer).
caution_disease_1 = Plötzliche oder ungewöhnliche Todesfälle bei Eiern, Küken oder Hennen sind Sache des Tierarztes und, wo Vögel eines Ortes gemeinsam sterben, der Veterinärbehörde Ihres Landes. hatchkit kann keine Krankheit erkennen.
caution_hatch_1 = Ein geplatztes Ei verteilt Bakterien im ganzen Brüter: nehmen Sie faule Eier früh heraus und reinigen Sie sofort.
caution_hatch_2 = Kinder waschen sich nach Küken und Eiern unter den Augen Erwachsener die Hände; Küken werden nicht geküsst und nicht an das Gesicht gehalten.
caution_storage_1 = Legen Sie keine angeknickten oder schmutzigen Eier ein, und waschen Sie warme Eier nicht in kälterem Wasser: das zieht Keime durch die Schale.
caution_cleaning_1 = Kein Formaldehyd zu Hause: es ist giftig und gilt als krebserregend. Folgen Sie bei jedem Desinfektionsmittel dem Etikett, lüften Sie den Raum, mischen Sie nie Mittel, und ziehen Sie zuerst den Stecker.
