# Precauciones que se muestran en todas partes.
take_care = Cuidado
caution_machine_1 = Corriente y agua: desenchufe la incubadora antes de llenarla, vaciarla o limpiarla, mantenga enchufes y cables lejos de superficies mojadas, y conéctela a una toma con interruptor diferencial.
caution_machine_2 = En un corte de luz no use llama cerca de una incubadora: muchas son de espuma, que arde. Una tapa cerrada y unas mantas guardan el calor más de lo que se cree.
caution_opening_eggs_1 = Mire al trasluz cada huevo sin nacer antes de abrirlo y trátelo como vivo hasta haber visto que no lo está.
caution_opening_eggs_2 = Los huevos podridos estallan. Abra los huevos al aire libre o en un sitio bien ventilado, sin corriente hacia usted, en una bandeja o bolsa, con guantes y gafas y sin alimentos cerca; nunca los agite ni los caliente. Mantenga lejos a los niños y a las personas con pocas defensas.
caution_opening_eggs_3 = Lávese las manos con jabón después de tocar huevos, aves o sus cosas: aves de aspecto sano y huevos limpios pueden llevar salmonela.
caution_killing_1 = Los embriones pueden sentir dolor al final de la incubación. Matar un embrión, un pollito o un picado vivo es tarea de manos expertas, de un modo que permita la ley de su país; pregunte a un veterinario. hatchkit muestra el día publicado más estricto desde el que se debe tener cuidado (dos tercios de la incubación).
caution_disease_1 = Las muertes repentinas o inusuales, de huevos, pollitos o gallinas, son asunto de un veterinario y, donde las aves de un lugar mueren juntas, de la autoridad sanitaria de su país. hatchkit no puede reconocer ninguna enfermedad.
caution_hatch_1 = Un huevo reventado reparte bacterias por toda la incubadora: retire pronto los huevos podridos y limpie enseguida.
caution_hatch_2 = Los niños se lavan las manos a la vista de un adulto después de tocar pollitos y huevos; nada de besar ni apretar pollitos contra la cara.
caution_storage_1 = No ponga huevos agrietados o sucios, y no lave huevos calientes en agua más fría: atrae gérmenes a través de la cáscara.
caution_cleaning_1 = Nada de formol en casa: es venenoso y se tiene por cancerígeno. Siga la etiqueta de todo desinfectante, ventile el cuarto, nunca mezcle productos, y desenchufe antes la incubadora.
