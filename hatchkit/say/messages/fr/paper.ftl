# Papier : la feuille de mirage, les explications du classeur vierge, les remarques de season.toml.

paper_candling = Feuille de mirage
paper_head_batch = Couvée
paper_head_kind = Oiseaux
paper_head_machine = Couveuse
paper_head_eggs = Œufs mis
paper_head_set = Mis le
paper_look = Étape
paper_day = Jour
paper_when = Date
paper_clear = Clairs
paper_dead = Morts
paper_other = Fêlés, pourris, autres
paper_left = Remis
paper_notes = Remarques
paper_date = { DAY($day) }
paper_ticks = Vu aux œufs non éclos et aux poussins : cochez
paper_explain_clear = Clair : aucun signe de germe. Mort : un anneau de sang, une masse sombre qui ne bouge pas, des vaisseaux pâlis.
paper_explain_blank = Écrivez 0 là où vous avez regardé sans rien trouver ; laissez vide ce que vous n’avez pas regardé.
paper_explain_copy = Recopiez les lignes dans batches.xlsx : les deux premiers mirages et le transfert dans le tableau des couvées, les autres dans la feuille des mirages, les signes dans la colonne des signes.
paper_usual = Jours habituels des deux mirages, du transfert et de l’éclosion : { LIST($birds) }.
paper_bird = { $bird } { LIST($days) }

start_in_the_way = { $path } est sur le chemin ; hatchkit n’écrit pas par-dessus.
start_unwritable = On ne peut pas écrire dans { $folder } ({ $why }) ; choisissez un autre dossier.

sheet_fill = Comment remplir
fill_title = Comment remplir ce classeur (hatchkit)
fill_how = Laissez vide ce qui n’a pas été compté ; écrivez 0 si l’on a compté et qu’il n’y en avait pas. Écrivez l’heure avec chaque date si vous la savez : 2026-03-05 18:30.
fill_folded = Ce qui sert rarement est replié : les petits signes plus au-dessus des colonnes l’ouvrent. Vous pouvez enlever ou ajouter des colonnes.
fill_head_sheet = Feuille
fill_head_column = Colonne
fill_head_what = Ce que l’on y met
fill_head_unit = Unité
fill_head_one_of = Au choix
fill_batches = Une ligne par couvée : ce qui est entré, ce qu’a montré chaque mirage, ce qui est sorti.
fill_eggs = Une ligne par œuf, si vous numérotez vos œufs. Facultatif.
fill_weights = Une ligne par pesée, d’un œuf ou de tout un plateau. Facultatif.
fill_candlings = Une ligne par mirage, si vous mirez plus de deux fois. Facultatif.
fill_choose = Choisissez dans la liste.
fill_number = Un nombre à partir de 0, ou vide si l’on n’a pas compté.
unit_time = jour et heure, à votre horloge
unit_eggs = œufs
unit_days = jours
unit_weeks = semaines
unit_g = grammes

toml_head = Ce que hatchkit ne peut pas deviner de cette saison. Enlevez le # devant une ligne pour l’utiliser.
toml_title = Ma saison
toml_language = La langue de hatchkit : en, de, fr ou es. Sans elle, c’est celle de vos tableaux.
toml_timezone = Le fuseau de votre horloge ; mesures et dates sont ramenées à une même heure.
toml_default = Si tous les œufs sont d’une sorte, ou tous dans une couveuse, ces colonnes peuvent rester vides.
    Les espèces sont : { $species }.
toml_incubators = Une section par couveuse. Mettez ses enregistrements dans le dossier sensors.
toml_files = quels enregistrements lui appartiennent
toml_air = "fan" (air brassé par un ventilateur) ou "still" (air immobile)
toml_set_point = le réglage du thermostat, en °C
toml_offset = ajouté aux mesures : ce que la sonde montre de trop, avec un moins
toml_altitude = altitude, pour l’humidité
toml_sensors = Enregistrements : seulement si hatchkit le demande.
toml_unit = "C", "F" ou "K"
toml_day_first = 04/05/2026 est le 4 mai
toml_sheets = Tableaux : de même pour les dates tapées comme du texte.
toml_headers = Vos propres titres, s’ils ne sont pas reconnus : "votre titre" = "colonne".
toml_heading = Œufs entrés
toml_species = Vos propres chiffres pour un oiseau, à partir d’un oiseau connu.
