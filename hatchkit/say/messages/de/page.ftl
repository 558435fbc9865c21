# Der Rahmen jeder Seite mit Befunden, und was allen Tabellen gemeinsam ist.

page_answer = Die Antwort
page_how_sure = Wie sicher ist das?
page_do_now = Was jetzt zu tun ist
page_contents = Auf dieser Seite
page_more = Mehr
page_records = Zu den Aufzeichnungen
page_unknown = Was nicht bekannt ist
page_care = Vorsicht
page_made = Erstellt von hatchkit { $version } am { DAY($today) }.

# Wie sicher eine Antwort ist, daneben.
how_sure_sure = (sicher)
how_sure_likely = (wahrscheinlich)
how_sure_guess = (eine Vermutung unter anderen)
how_sure_cannot_tell = (die Aufzeichnungen sagen es nicht)

shown_none = nicht bekannt
shown_share = { SHARE($share) }
shown_share_range = { SHARE($share) } ({ SHARE($low) } bis { SHARE($high) })
shown_step = { STEP($step) }
shown_degrees = { DEGREES($degrees) }
shown_time = { MINUTE($time) }
shown_number = { TENTH($number) }

# Die Auswahlliste des Notizbuchs 2.
form_batch = Brut:
form_batch_hatched = { $batch }: { $hatched } von { $set } geschlüpft
