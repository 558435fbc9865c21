# Ce qui n’a pas pu être pris tel qu’il est écrit : constat, suite donnée, correction.

answers_unreadable =
    .found = les réponses gardées auparavant ne peuvent pas être lues : { $path }
    .done = Elles ne sont pas utilisées ; ce qui avait été demandé l’est de nouveau.
    .fix = Effacez le fichier et répondez de nouveau ; hatchkit check DOSSIER --ask.
answers_elsewhere =
    .found = { $count ->
        [1] une de vos réponses se trouve
       *[other] { $count } de vos réponses se trouvent
    } dans { $path }, car on ne peut pas écrire dans le dossier de la saison
    .done = Utilisé.
answers_nowhere = Les réponses n’ont pu être écrites ni dans { $folder }, ni dans le dossier de travail, ni dans votre dossier personnel ; lancez hatchkit dans un dossier où vous pouvez écrire.

tables_in_season = { $path } se trouve dans le dossier même de la saison, où ses tableaux seraient lus comme une partie d’elle : nommez un autre dossier.
not_written = { $path } n’a pas pu être écrit : { $why }. Rien n’y a été changé.
tables_unwritable = On ne peut pas écrire dans { $path } : { $why }.
tables_not_empty = { $path } contient autre chose ({ $names } ...) : nommez un dossier nouveau ou vide pour les tableaux.

language_other =
    .found = les tableaux sont dans une autre langue ({ TONGUES($tongues) })
    .done = Ce qui est dit de la saison est en anglais.
    .fix = Écrivez language = "fr" (ou "de", "es", "en") dans season.toml pour en avoir une autre.
language_mixed =
    .found = les tableaux sont dans plusieurs langues ({ TONGUES($tongues) })
    .done = Ce qui est dit de la saison est en anglais.
    .fix = Écrivez language = "fr" (ou "de", "es", "en") dans season.toml pour en avoir une autre.
language_unknown = Il n’y a pas de langue « { $language } » ; il y a { LIST($known) }.
