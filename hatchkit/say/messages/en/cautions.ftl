# The cautions that every surface shows; reference/cautions.csv has their tasks and sources.
take_care = Take care
caution_machine_1 = Mains electricity and water: unplug the machine before you fill, empty or clean it, keep plugs and leads off wet surfaces, and run it from a socket with a residual-current (ground-fault) breaker.
caution_machine_2 = In a power cut use no flame near an incubator: many are made of foam that burns. A lid kept shut and blankets hold heat longer than one thinks.
caution_opening_eggs_1 = Candle every unhatched egg before you open it and treat it as alive until you have seen that it is not.
caution_opening_eggs_2 = Rotten eggs burst. Open eggs outdoors or in a well-aired place without draught towards you, in a tray or bag, with gloves and eye protection and no food near; never shake or warm them. Keep children and people with weak immunity away.
caution_opening_eggs_3 = Wash hands with soap after eggs, birds or their gear: healthy-looking birds and clean eggs can carry Salmonella.
caution_killing_1 = Embryos late in incubation may feel pain. Killing an embryo, chick or live pip is a task for trained hands, in a way that the law of your country allows; ask a veterinarian. hatchkit shows the strictest published day from which care is due (two thirds of incubation).
caution_disease_1 = Sudden or unusual deaths, in eggs, chicks or hens, are a matter for a veterinarian and, where birds of one place die together, for your country's animal-disease authority. hatchkit cannot recognise a disease.
caution_hatch_1 = A burst egg spreads bacteria through the whole machine: take out rotten eggs early and clean at once.
caution_hatch_2 = Children's hands are washed under an adult's eyes after chicks and eggs; no kissing or snuggling of chicks.
caution_storage_1 = Do not set cracked or dirty eggs, and do not wash warm eggs in colder water: it draws germs in through the shell.
caution_cleaning_1 = No formaldehyde at home: it is poisonous and thought to cause cancer. Follow the label of any disinfectant, air the room, never mix products, and unplug the machine first.
