# Fichiers et dossiers qui ne peuvent être lus ou écrits.

file_refused =
    .found = { $why }
    .done = Rien de ce fichier n’est utilisé.
    .fix = { $fix ->
        [password] Enregistrez-le sans mot de passe.
        [smaller] Copiez le tableau lui-même dans un nouveau classeur et enregistrez-le dans le dossier de la saison.
        [close] Fermez-le dans l’autre programme (ou demandez le droit de le lire), puis recommencez.
        [copy] Copiez-le de nouveau dans le dossier de la saison.
       *[anew] Ouvrez-le dans votre tableur, enregistrez-le à neuf en .xlsx ou .csv, puis recommencez.
    }
book_not_ordinary = ce n’est pas un fichier ordinaire
book_in_use = le fichier ne peut pas être ouvert : un autre programme le tient, ou vous n’avez pas le droit de le lire
book_unreadable = le fichier ne peut pas être lu ({ $why ->
        [none] le disque a refusé
       *[told] { $why }
    })
book_too_large = le fichier a { $mb } Mo, plus que les { $most } Mo que hatchkit ouvre
book_unpacks_too_large = le fichier décompressé a { $mb } Mo, plus que les { $most } Mo que hatchkit ouvre
book_text_too_large = le fichier a { $mb } Mo, plus que les { $most } Mo d’un tableau de couvées
book_empty = le fichier est vide
book_password = le classeur est protégé par un mot de passe
book_password_or_old = le classeur est protégé par un mot de passe, ou c’est un ancien classeur sous un nouveau nom
book_damaged = le fichier est endommagé ou n’est pas un classeur
book_sheet_damaged = la feuille { $sheet } est endommagée
book_spans = la feuille { $sheet } s’étend sur { $rows } lignes et { $columns } colonnes
book_not_text = le fichier n’est pas du texte, quoi qu’en dise son nom
book_not_table = le fichier n’est pas un tableau de texte
book_too_many = le fichier a plus de { $rows } lignes ou { $columns } colonnes
book_not_whole = le fichier est endommagé : il ne peut pas être décompressé en entier
book_sheet_missing = le fichier est endommagé : une de ses feuilles ne s’y trouve pas
book_sheets_unread = le fichier est endommagé : la liste de ses feuilles ne peut pas être lue
book_table_unread = le fichier est endommagé : son tableau ne peut pas être lu
book_repeats = une cellule est répétée si souvent qu’une feuille aurait { $cells } cellules
book_entities = le fichier définit un texte à lui qui pourrait se déplier sans fin
book_sheet_hidden =
    .found = la feuille est masquée
    .done = Elle est lue comme les autres.
    .fix = Supprimez-la si elle n’est pas voulue.
book_cell_error =
    .found = la cellule montre { $shown }
    .done = La cellule compte comme vide.
    .fix = Corrigez sa formule.
book_cells_unsaved =
    .found = { $count ->
        [1] 1 formule
       *[other] { $count } formules
    } sans résultat enregistré, d’abord en { $cell }
    .done = Ces cellules comptent comme vides.
    .fix = Ouvrez le classeur dans votre tableur et enregistrez-le une fois ; puis recommencez.
book_cell_far =
    .found = une cellule loin du tableau : { $cell }
    .done = Seules les { $rows } premières lignes et { $columns } premières colonnes sont lues.
    .fix = Supprimez les lignes et colonnes au-delà du tableau, puis enregistrez.

no_folder = Il n’y a pas de dossier { $folder } ; vérifiez l’orthographe, ou écrivez le chemin entier.
folder_is_file = { $folder } est un fichier ; hatchkit veut le dossier où il se trouve.
folder_unreadable = Le dossier { $folder } ne peut pas être lu ({ $why }) ; demandez le droit de le lire, ou copiez-le là où vous l’avez.
folder_only_lost = { $file }{ $sheet ->
        [none] { "" }
       *[named] , feuille { $sheet }
    } : { $found }. { $fix }
folder_empty = Le dossier { $folder } est vide ; mettez-y votre batches.xlsx ou .csv, ou écrivez-en un vierge avec : hatchkit start DOSSIER.
folder_without_batches = Il n’y a ni tableau de couvées ni enregistrement dans { $folder } ; il contient : { LIST($there, most: 8) }. Mettez-y votre batches.xlsx ou .csv, ou écrivez-en un vierge avec : hatchkit start DOSSIER.
demo_missing = La saison d’exemple n’est pas installée avec cette copie de hatchkit.
notebooks_missing = Les notebooks ne sont pas installés avec cette copie de hatchkit.

out_suffix = { $path } ne peut pas être le nom de ce fichier : donnez-lui un nom qui finit en { $suffix }.
out_no_folder = { $path } ne peut pas être écrit : donnez le nom d’un fichier dans un dossier qui existe.
out_unwritable = { $path } ne peut pas être écrit : { $why }.
out_own_records = { $path } fait partie des notes de la saison, où l’on n’écrit jamais : nommez un autre fichier.
out_would_be_read = { $path } serait lu comme une partie de la saison : nommez-le { $own }, ou écrivez-le dans un autre dossier.
out_among_read = { $path } se trouve parmi les fichiers qui sont lus, où l’on n’écrit jamais : nommez un fichier dans un autre dossier.

answers_head =
    # Ce qui a été confirmé quand hatchkit a demandé comment lire les tableaux de cette saison
    # (hatchkit check DOSSIER --ask, ou notebook 0). Écrit par hatchkit ; effacez le fichier, ou une [[answer]],
    # pour être interrogé de nouveau. Ce que dit season.toml l’emporte.
