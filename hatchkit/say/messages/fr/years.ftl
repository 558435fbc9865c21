# Plusieurs saisons lues ensemble, et ce que disent les années.

season_unreadable =
    .found = { $place } n’a pas pu être lu : { $why }
    .done = Les autres saisons sont lues sans elle.
    .mend = Corrigez cette saison comme le dit la ligne, ou déplacez son dossier.
no_season_readable = Aucune des saisons de { $folder } n’a pu être lue. La première : { $why }
keepers_by_folder =
    .found = les dossiers sont pris pour des éleveurs : { $keepers }
    .done = Leurs couveuses, parquets et couvées restent séparés.
    .mend = S’ils sont tous à vous, écrivez keeper = "votre nom" dans chaque season.toml.
zones_differ =
    .found = les saisons sont tenues dans des fuseaux horaires différents : { $zones }
    .done = Les heures sont celles de { $zone } ; chaque saison a été lue selon le sien.
species_differ =
    .found = les chiffres pour { $species } diffèrent entre les fichiers season.toml des saisons
    .done = Ceux de la dernière saison valent pour toutes.
    .mend = Écrivez la même section [species] dans chacun, ou donnez un autre nom à l’oiseau.
probe_replaced =
    .found = la couveuse { $machine } était enregistrée par { $before } en { $earlier } et par { $now } en { $later }
    .done = Pris pour une sonde remplacée ou renommée ; un saut de température entre les deux années peut venir de la sonde.
    .mend = Vérifiez la nouvelle sonde à côté de l’ancienne ou d’un thermomètre médical, et écrivez probe_offset_c pour elle.
offset_changed =
    .found = la correction de la sonde de la couveuse { $machine } est { $before } en { $earlier } et { $now } en { $later }
    .done = Chaque année est corrigée par la sienne.
air_changed =
    .found = la couveuse { $machine } est { $before } en { $earlier } et { $now } en { $later }
    .done = Les œufs de chaque année sont calculés selon la sienne.
change_unread =
    .found = le changement { $number } n’a pas de jour ou pas de mots
    .done = Il n’est pas utilisé.
    .mend = Écrivez le jour et ce qui a été changé.
changes_no_heading =
    .found = la liste des changements n’a pas de titres pour le jour et pour ce qui a été changé
    .done = Elle n’est pas utilisée.
    .mend = Écrivez Date et Quoi au-dessus de ses colonnes.
question_machine_renamed = Dans { $file } il y a une couveuse « { $heading } » qui n’y était pas, et une de l’année d’avant a disparu. Est-ce la même sous un nouveau nom ? Pris pour l’instant : { $choice }.
value_another_machine = une autre couveuse
