# Dateien und Ordner, die nicht gelesen oder geschrieben werden können.

file_refused =
    .found = { $why }
    .done = Von dieser Datei wird nichts verwendet.
    .fix = { $fix ->
        [password] Speichern Sie sie ohne Kennwort.
        [smaller] Kopieren Sie die Tabelle selbst in eine neue Arbeitsmappe und speichern Sie diese im Ordner der Saison.
        [close] Schließen Sie sie im anderen Programm (oder bitten Sie um das Recht, sie zu lesen), dann noch einmal.
        [copy] Kopieren Sie sie neu in den Ordner der Saison.
       *[anew] Öffnen Sie sie in Ihrem Tabellenprogramm, speichern Sie sie neu als .xlsx oder .csv, dann noch einmal.
    }
book_not_ordinary = sie ist keine gewöhnliche Datei
book_in_use = die Datei kann nicht geöffnet werden: ein anderes Programm hält sie, oder Sie dürfen sie nicht lesen
book_unreadable = die Datei kann nicht gelesen werden ({ $why ->
        [none] der Datenträger verweigerte es
       *[told] { $why }
    })
book_too_large = die Datei hat { $mb } MB, mehr als die { $most } MB, die hatchkit öffnet
book_unpacks_too_large = die Datei hat entpackt { $mb } MB, mehr als die { $most } MB, die hatchkit öffnet
book_text_too_large = die Datei hat { $mb } MB, mehr als die { $most } MB einer Tabelle von Bruten
book_empty = die Datei ist leer
book_password = die Arbeitsmappe ist mit einem Kennwort geschützt
book_password_or_old = die Arbeitsmappe ist mit einem Kennwort geschützt, oder eine alte Arbeitsmappe unter neuem Namen
book_damaged = die Datei ist beschädigt oder keine Arbeitsmappe
book_sheet_damaged = das Blatt { $sheet } ist beschädigt
book_spans = das Blatt { $sheet } reicht über { $rows } Zeilen und { $columns } Spalten
book_not_text = die Datei ist kein Text, obwohl ihr Name es sagt
book_not_table = die Datei ist keine Tabelle aus Text
book_too_many = die Datei hat mehr als { $rows } Zeilen oder { $columns } Spalten
book_not_whole = die Datei ist beschädigt: sie lässt sich nicht ganz entpacken
book_sheet_missing = die Datei ist beschädigt: eines ihrer Blätter ist nicht darin zu finden
book_sheets_unread = die Datei ist beschädigt: die Liste ihrer Blätter ist nicht lesbar
book_table_unread = die Datei ist beschädigt: ihre Tabelle ist nicht lesbar
book_repeats = eine Zelle ist so oft wiederholt, dass ein Blatt { $cells } Zellen hätte
book_entities = die Datei bestimmt eigenen Text, der sich ohne Ende entfalten könnte
book_sheet_hidden =
    .found = das Blatt ist ausgeblendet
    .done = Es wird wie die anderen gelesen.
    .fix = Löschen Sie es, wenn es nicht gemeint ist.
book_cell_error =
    .found = die Zelle zeigt { $shown }
    .done = Die Zelle zählt als leer.
    .fix = Berichtigen Sie ihre Formel.
book_cells_unsaved =
    .found = { $count ->
        [one] 1 Formel
       *[other] { $count } Formeln
    } ohne gespeichertes Ergebnis, zuerst in { $cell }
    .done = Diese Zellen zählen als leer.
    .fix = Öffnen Sie die Arbeitsmappe in Ihrem Tabellenprogramm und speichern Sie sie einmal; dann noch einmal.
book_cell_far =
    .found = eine Zelle weitab von der Tabelle: { $cell }
    .done = Nur die ersten { $rows } Zeilen und { $columns } Spalten werden gelesen.
    .fix = Löschen Sie die Zeilen und Spalten jenseits der Tabelle, dann speichern.

no_folder = Einen Ordner { $folder } gibt es nicht; prüfen Sie die Schreibung, oder schreiben Sie den ganzen Pfad.
folder_is_file = { $folder } ist eine Datei; hatchkit braucht den Ordner, in dem sie liegt.
folder_unreadable = Der Ordner { $folder } kann nicht gelesen werden ({ $why }); bitten Sie um das Recht, ihn zu lesen, oder kopieren Sie ihn dorthin, wo Sie es dürfen.
folder_only_lost = { $file }{ $sheet ->
        [none] { "" }
       *[named] , Blatt { $sheet }
    }: { $found }. { $fix }
folder_empty = Der Ordner { $folder } ist leer; legen Sie Ihre batches.xlsx oder .csv hinein, oder schreiben Sie eine leere mit: hatchkit start ORDNER.
folder_without_batches = In { $folder } gibt es weder eine Tabelle von Bruten noch eine Aufzeichnung; darin liegen: { LIST($there, most: 8) }. Legen Sie Ihre batches.xlsx oder .csv hinein, oder schreiben Sie eine leere mit: hatchkit start ORDNER.
demo_missing = Die Beispielsaison ist mit dieser Kopie von hatchkit nicht installiert.
notebooks_missing = Die Notebooks sind mit dieser Kopie von hatchkit nicht installiert.

out_suffix = { $path } kann diese Datei nicht heißen: nehmen Sie einen Namen, der auf { $suffix } endet.
out_no_folder = { $path } kann nicht geschrieben werden: nennen Sie eine Datei in einem Ordner, den es gibt.
out_unwritable = { $path } kann nicht geschrieben werden: { $why }.
out_own_records = { $path } gehört zu den Aufzeichnungen der Saison selbst, in die nie geschrieben wird: nennen Sie eine andere Datei.
out_would_be_read = { $path } würde als Teil der Saison gelesen: nennen Sie sie { $own }, oder schreiben Sie sie in einen anderen Ordner.
out_among_read = { $path } liegt unter den Dateien, die gelesen werden und in die nie geschrieben wird: nennen Sie eine Datei in einem anderen Ordner.

answers_head =
    # Was bestätigt wurde, als hatchkit fragte, wie die Tabellen dieser Saison zu lesen sind
    # (hatchkit check ORDNER --ask, oder Notebook 0). Von hatchkit geschrieben; löschen Sie die Datei oder eine
    # [[answer]], um neu gefragt zu werden. Was in season.toml steht, gilt mehr.
