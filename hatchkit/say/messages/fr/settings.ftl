# Ce qui ne peut pas être utilisé de season.toml.

set_unreadable =
    .found = le fichier ne peut pas être lu : { $why }
    .done = La saison est lue sans ses réglages.
    .fix = Corrigez cette ligne ; le texte veut des guillemets, comme dans timezone = "Europe/Rome".
set_nested =
    .found = le fichier contient des crochets dans des crochets sans fin
    .done = La saison est lue sans ses réglages.
    .fix = Écrivez-le à neuf.
set_not_opened =
    .found = le fichier ne peut pas être ouvert ({ $why })
    .done = La saison est lue sans ses réglages.
    .fix = Fermez-le dans les autres programmes.
set_no_zone =
    .found = aucun fuseau horaire n’est donné
    .done = Votre horloge est prise telle quelle, sans heure d’été.
    .fix = Écrivez timezone = "Europe/Rome" (votre fuseau) dans season.toml.
set_unknown_zone =
    .found = { $zone } n’est pas un fuseau horaire connu
    .done = Votre horloge est prise telle quelle, sans heure d’été.
    .fix = { $near ->
        [none] Écrivez-le comme "Europe/Rome".
       *[some] Vouliez-vous dire "{ $near }" ?
    }
set_species_no_section =
    .found = species n’est pas une section
    .done = Non utilisé.
    .fix = Écrivez [species.{ $name ->
        [none] my_bird
       *[given] { $name }
    }], ses chiffres dessous.
set_based_on =
    .found = [species.{ $name }] { $based_on ->
        [none] ne dit pas sur quoi il se fonde (based_on)
       *[given] se fonde sur { $based_on }, qui n’est pas connu
    }
    .done = Non utilisé.
    .fix = Écrivez based_on = "chicken" (connus : { LIST($known) }).
set_unknown_figure =
    .found = { $figure } n’est pas un chiffre que hatchkit connaît
    .done = Non utilisé.
    .fix = { $near ->
        [none] Sont connus : { LIST($known) }.
       *[some] Vouliez-vous dire { $near } ?
    }
set_figure_no_number =
    .found = { $figure } = { $value } n’est pas un nombre
    .done = Le chiffre de hatchkit est utilisé.
    .fix = Écrivez un simple nombre.
set_figure_far =
    .found = { $figure } = { $value } est loin de celui de tout oiseau que hatchkit connaît
    .done = Le chiffre de hatchkit est utilisé.
    .fix = Corrigez le chiffre.
set_days_disorder =
    .found = [species.{ $name }] : mirages, transfert et éclosion ne se suivent pas
    .done = Les chiffres de hatchkit sont utilisés.
    .fix = Corrigez les jours ; chacun doit venir après le précédent.
set_unknown =
    .found = { $where } n’est pas un réglage que hatchkit connaît
    .done = Non utilisé.
    .fix = { $near ->
        [none] { "" }
       *[some] Vouliez-vous dire { $near } ?
    }
set_no_section =
    .found = { $where } = { $value } n’est pas une section
    .done = Non utilisé.
    .fix = Écrivez-le comme section : [{ $where }]
set_no_list =
    .found = { $where } n’est pas une liste d’entrées
    .done = Non utilisé.
    .fix = Écrivez chacune sous son propre [[{ $where }]].
set_lacks =
    .found = { $list ->
        [changes] un changement veut date et what
       *[norms] un niveau à soi veut species, stage et share
    }
    .done = Non utilisé.
    .fix = Ajoutez ce qui manque.
set_unknown_column =
    .found = { $taken } n’est pas une colonne de hatchkit
    .done = Non utilisé.
    .fix = { $near ->
        [none] Les colonnes sont dans le README.
       *[some] Vouliez-vous dire "{ $heading }" = "{ $near }" ?
    }
set_wrong =
    .found = { $key } = { $value } { $wrong ->
        [text] n’est pas un texte entre guillemets
        [yes_no] n’est ni true ni false
        [choice] n’est aucun de { LIST($choices) }
        [zone] n’est pas un fuseau horaire connu
        [names] n’est pas une liste de noms
        [range] est hors de { PLAIN($low) } à { PLAIN($high) }
       *[number] n’est pas un nombre
    }
    .done = Non utilisé.
    .fix = Écrivez-le comme { $example }
