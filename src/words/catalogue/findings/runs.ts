import type { Area } from '../translation.ts';

/** What is found of runs, and of what was measured. */
export const runs = {
  '{name} ends at {end} and its devices need {least}: {lack} too little.': {
    de: '{name}: Endspannung {end}, die Geräte brauchen {least} – {lack} zu wenig.',
    fr: '{name} : tension en bout {end}, les appareils demandent {least} : il manque {lack}.',
  },
  '{name} has no working voltage: its devices draw constant power, and the cable cannot deliver what they ask for at any voltage.': {
    de: '{name}: keine Betriebsspannung möglich. Die Geräte nehmen eine konstante Leistung auf, und die Leitung kann sie bei keiner Spannung übertragen.',
    fr: '{name} : aucune tension de service possible. Les appareils absorbent une puissance constante que le câble ne peut fournir à aucune tension.',
  },
  '{name} loses {drop}, {ratio} of its voltage, and may lose {most}.': {
    de: '{name}: Spannungsfall {drop}, das sind {ratio} der Spannung, zulässig {most}.',
    fr: '{name} : chute de tension {drop}, soit {ratio} de la tension, admissible {most}.',
  },
  'With {conductor} it may be {length} m long.': {
    de: 'Mit {conductor} darf sie {length} m lang sein.',
    fr: 'Avec {conductor}, longueur admissible {length} m.',
  },
  'With {conductor} it may be {length} m long; {thicker} would do at this length.': {
    de: 'Mit {conductor} darf sie {length} m lang sein; bei dieser Länge genügt {thicker}.',
    fr: 'Avec {conductor}, longueur admissible {length} m ; {thicker} convient à cette longueur.',
  },
  'With {conductor} no length works; {thicker} would do at this length.': {
    de: 'Mit {conductor} genügt sie bei keiner Länge; bei dieser Länge genügt {thicker}.',
    fr: 'Avec {conductor}, aucune longueur ne convient ; {thicker} convient à cette longueur.',
  },
  'No conductor on the sheet {sheet} would do: feed it from another place, or share the load over more runs.': {
    de: 'Kein Leiter auf dem Blatt „{sheet}“ genügt: von einer anderen Stelle speisen oder die Last auf mehrere Leitungen verteilen.',
    fr: 'Aucun conducteur de la feuille « {sheet} » ne convient : alimenter depuis un autre endroit ou répartir la charge sur plusieurs liaisons.',
  },
  '{name}: a short circuit at its far end draws {fault}, and the protection of {protection} needs {needed} ({trip} × its rating) to act at once. The supply may fold back and feed the fault without ever clearing it. Use a smaller or faster protection, a thicker or shorter cable, or a supply with a higher peak.': {
    de: '{name}: Kurzschlussstrom am Leitungsende {fault}, die Schutzeinrichtung mit {protection} braucht zum sofortigen Auslösen {needed} ({trip} × Bemessungsstrom). Die Versorgung kann ihren Strom begrenzen und den Fehler speisen, ohne dass je abgeschaltet wird. Eine kleinere oder flinkere Schutzeinrichtung, einen größeren Querschnitt, eine kürzere Leitung oder eine Versorgung mit höherem Spitzenstrom wählen.',
    fr: '{name} : courant de court-circuit en bout de liaison {fault} ; la protection de {protection} demande {needed} ({trip} × son courant assigné) pour agir aussitôt. L’alimentation peut limiter son courant et alimenter le défaut sans jamais l’éliminer. Choisir une protection de calibre inférieur ou plus rapide, une section plus grande, un câble plus court ou une alimentation à courant de crête plus élevé.',
  },
  '{name}: {missing, plural, one {# device row on it has no known current, so its drop is at least what is shown. Complete it} other {# device rows on it have no known current, so its drop is at least what is shown. Complete them}} to know the rest.': {
    de: '{name}: Von {missing, plural, one {# Gerätezeile} other {# Gerätezeilen}} ist der Strom nicht bekannt, der Spannungsfall ist mindestens der angezeigte. Die Angaben vervollständigen, um den Gesamtwert zu erhalten.',
    fr: '{name} : courant inconnu pour {missing, plural, one {# ligne d’appareils ; la chute de tension est au moins celle affichée. La} other {# lignes d’appareils ; la chute de tension est au moins celle affichée. Les}} compléter pour obtenir la valeur totale.',
  },
  '{name} carries {value} and its conductor may carry {limit}: {excess} too much. Use a thicker conductor or more pairs.': {
    de: '{name} führt {value}, der Leiter darf {limit} führen – {excess} zu viel. Einen größeren Querschnitt oder mehr Adernpaare wählen.',
    fr: '{name} : courant {value}, admissible pour le conducteur {limit}, soit {excess} de trop. Choisir une section plus grande ou plus de paires.',
  },
  '{name} is protected by {protection} and its conductor may carry {most}: the cable would overheat before the protection acts. Use a smaller protection or a thicker conductor.': {
    de: '{name} ist mit {protection} abgesichert, der Leiter darf {most} führen: Die Leitung würde zu heiß, bevor die Schutzeinrichtung anspricht. Eine kleinere Schutzeinrichtung oder einen größeren Querschnitt wählen.',
    fr: '{name} : protection de {protection}, admissible pour le conducteur {most} ; le câble surchaufferait avant que la protection agisse. Choisir une protection de calibre inférieur ou une section plus grande.',
  },
  '{name} carries {value} through a protection of {limit}: {excess} too much. Share the load over more runs, or use a larger protection if the conductor carries it.': {
    de: '{name} führt {value} über eine Schutzeinrichtung mit {limit} – {excess} zu viel. Die Last auf mehrere Leitungen verteilen oder eine größere Schutzeinrichtung wählen, wenn der Leiter sie zulässt.',
    fr: '{name} : courant {value} à travers une protection de {limit}, soit {excess} de trop. Répartir la charge sur plusieurs liaisons ou choisir une protection de calibre supérieur si le conducteur le permet.',
  },
  '{name} has no rail, so its voltage is not known. Choose the rail that feeds it.': {
    de: '{name}: keine Schiene angegeben, die Spannung ist daher nicht bekannt. Die speisende Schiene wählen.',
    fr: '{name} : aucun rail indiqué, la tension n’est donc pas connue. Choisir le rail qui l’alimente.',
  },
  '{name} has no conductor, so its drop is not known. Choose one of the conductors.': {
    de: '{name}: kein Leiter angegeben, der Spannungsfall ist daher nicht bekannt. Einen der Leiter wählen.',
    fr: '{name} : aucun conducteur indiqué, la chute de tension n’est donc pas connue. Choisir un des conducteurs.',
  },
  '{name} has no length, so its drop is not known. Enter the length of the cable, one way, in m.': {
    de: '{name}: keine Länge eingetragen, der Spannungsfall ist daher nicht bekannt. Die einfache Leitungslänge in m eintragen.',
    fr: '{name} : aucune longueur indiquée, la chute de tension n’est donc pas connue. Indiquer la longueur du câble, aller simple, en m.',
  },
  '{name}: the voltage of its rail is not known. Add the rail to the sheet {sheet}, or correct the tag.': {
    de: '{name}: Die Spannung der Schiene ist nicht bekannt. Die Schiene auf dem Blatt „{sheet}“ ergänzen oder das Kennzeichen berichtigen.',
    fr: '{name} : la tension du rail n’est pas connue. Ajouter le rail à la feuille « {sheet} » ou corriger le repère.',
  },
  '{name}: the resistance of its conductor is not known. Enter it on the sheet {sheet}, or choose another conductor.': {
    de: '{name}: Der Widerstand des Leiters ist nicht bekannt. Den Widerstand auf dem Blatt „{sheet}“ eintragen oder einen anderen Leiter wählen.',
    fr: '{name} : la résistance du conducteur n’est pas connue. L’indiquer sur la feuille « {sheet} » ou choisir un autre conducteur.',
  },
  '{name} has a protection, and the rated current of its supply is not known: whether a short circuit at its far end clears cannot be said. Enter it on the sheet {sheet}.': {
    de: '{name} hat eine Schutzeinrichtung, der Bemessungsstrom der Versorgung ist aber nicht bekannt: Ob ein Kurzschluss am Leitungsende abgeschaltet wird, lässt sich nicht sagen. Den Bemessungsstrom auf dem Blatt „{sheet}“ eintragen.',
    fr: '{name} : protection indiquée, mais le courant assigné de l’alimentation n’est pas connu ; l’élimination d’un court-circuit en bout de liaison ne peut être jugée. Indiquer le courant assigné sur la feuille « {sheet} ».',
  },
  '{name} has no protection entered: neither overload nor a short circuit at its end is checked. Enter its rating in A.': {
    de: '{name}: keine Schutzeinrichtung eingetragen; weder Überlast noch Kurzschluss am Leitungsende werden geprüft. Den Bemessungsstrom der Schutzeinrichtung in A eintragen.',
    fr: '{name} : aucune protection indiquée ; ni la surcharge ni le court-circuit en bout ne sont vérifiés. Indiquer le courant assigné de la protection en A.',
  },
  '{name}: what its conductor carries is not known, so its current is not checked against it. Enter it on the sheet {sheet} where a source says so.': {
    de: '{name}: Die Strombelastbarkeit des Leiters ist nicht bekannt; der Strom wird nicht dagegen geprüft. Die Strombelastbarkeit auf dem Blatt „{sheet}“ eintragen, wenn eine Quelle sie angibt.',
    fr: '{name} : le courant admissible du conducteur n’est pas connu ; le courant n’est pas vérifié. Indiquer le courant admissible sur la feuille « {sheet} » si une source le donne.',
  },
  '{name}: no device on it says which voltage it needs, so the end voltage is not checked. Enter the least voltage of their types.': {
    de: '{name}: Kein Gerät daran gibt an, welche Spannung es braucht; die Endspannung wird nicht geprüft. Die Mindestspannung der Gerätetypen eintragen.',
    fr: '{name} : aucun appareil n’indique la tension qu’il demande ; la tension en bout n’est pas vérifiée. Indiquer la tension minimale des types d’appareil.',
  },
  '{name}: {measured} measured, {worked} worked out: {difference} more, where {allowed} may differ.': {
    de: '{name}: {measured} gemessen, {worked} berechnet – {difference} mehr, zulässige Abweichung {allowed}.',
    fr: '{name} : valeur mesurée {measured}, calculée {worked}, soit {difference} de plus ; écart admis {allowed}.',
  },
  '{name}: {measured} measured, {worked} worked out: {difference} less, where {allowed} may differ.': {
    de: '{name}: {measured} gemessen, {worked} berechnet – {difference} weniger, zulässige Abweichung {allowed}.',
    fr: '{name} : valeur mesurée {measured}, calculée {worked}, soit {difference} de moins ; écart admis {allowed}.',
  },
  '{name} was measured at {measured} and may be used for {usable}: {excess} too much. Move devices to another rail, or fit a larger supply.': {
    de: '{name}: {measured} gemessen, nutzbar {usable} – {excess} zu viel. Geräte auf eine andere Schiene legen oder eine größere Versorgung einsetzen.',
    fr: '{name} : courant mesuré {measured}, utilisable {usable}, soit {excess} de trop. Déplacer des appareils vers un autre rail ou prévoir une alimentation plus puissante.',
  },
  '{name} was measured at {measured} at its far end, where a device needs {least}. Check joints, length and conductor; use a thicker conductor or more pairs.': {
    de: '{name}: am Leitungsende {measured} gemessen, ein Gerät braucht dort {least}. Verbindungen, Länge und Leiter prüfen; einen größeren Querschnitt oder mehr Adernpaare wählen.',
    fr: '{name} : tension mesurée en bout de liaison {measured}, un appareil y demande {least}. Vérifier raccordements, longueur et conducteur ; choisir une section plus grande ou plus de paires.',
  },
  'Usually more is switched on at once than the diversity says, or a device is missing in the schedule or draws more than entered. Check diversity, counts and draws.': {
    de: 'Meist ist mehr zugleich eingeschaltet, als der Gleichzeitigkeitsfaktor angibt, oder ein Gerät fehlt in der Aufstellung oder nimmt mehr auf als eingetragen. Gleichzeitigkeitsfaktor, Anzahl und Stromaufnahme prüfen.',
    fr: 'Le plus souvent, plus d’appareils sont en service à la fois que ne le dit le facteur de simultanéité, ou un appareil manque dans le bilan ou absorbe plus qu’indiqué. Vérifier facteur de simultanéité, quantités et courants unitaires.',
  },
  'Usually devices are not fitted, switched off or dimmed, or draw less than entered. Check that all of them work.': {
    de: 'Meist sind Geräte nicht eingebaut, ausgeschaltet oder gedimmt oder nehmen weniger auf als eingetragen. Prüfen, ob alle arbeiten.',
    fr: 'Le plus souvent, des appareils ne sont pas posés, sont hors service ou en gradation, ou absorbent moins qu’indiqué. Vérifier que tous fonctionnent.',
  },
  'Usually its output is set above the nominal voltage. Check that the devices accept it, or set it lower.': {
    de: 'Meist ist die Ausgangsspannung über die Nennspannung eingestellt. Prüfen, ob die Geräte sie vertragen, oder sie niedriger einstellen.',
    fr: 'Le plus souvent, la sortie est réglée au-dessus de la tension nominale. Vérifier que les appareils l’acceptent ou la régler plus bas.',
  },
  'Usually it is overloaded and limits its current, or its output is set too low. Check its load and its setting.': {
    de: 'Meist ist sie überlastet und begrenzt ihren Strom, oder die Ausgangsspannung ist zu niedrig eingestellt. Last und Einstellung prüfen.',
    fr: 'Le plus souvent, elle est surchargée et limite son courant, ou sa sortie est réglée trop bas. Vérifier sa charge et son réglage.',
  },
  'Usually a device is missing in the schedule, draws more than entered, or is wired to another run than entered. Check what hangs on it.': {
    de: 'Meist fehlt ein Gerät in der Aufstellung, nimmt mehr auf als eingetragen oder ist an einer anderen Leitung angeschlossen als eingetragen. Prüfen, was daran angeschlossen ist.',
    fr: 'Le plus souvent, un appareil manque dans le bilan, absorbe plus qu’indiqué ou est câblé sur une autre liaison qu’indiqué. Vérifier ce qui y est raccordé.',
  },
  'Usually devices are not fitted, switched off or dimmed, or the run is broken on the way. Check that all of them work.': {
    de: 'Meist sind Geräte nicht eingebaut, ausgeschaltet oder gedimmt, oder die Leitung ist unterbrochen. Prüfen, ob alle arbeiten.',
    fr: 'Le plus souvent, des appareils ne sont pas posés, sont hors service ou en gradation, ou la liaison est interrompue. Vérifier que tous fonctionnent.',
  },
  'Usually devices are switched off, the supply is set above nominal, or the cable is shorter or thicker than entered. Check these.': {
    de: 'Meist sind Geräte ausgeschaltet, die Versorgung ist über die Nennspannung eingestellt, oder die Leitung ist kürzer oder hat einen größeren Querschnitt als eingetragen. Diese Punkte prüfen.',
    fr: 'Le plus souvent, des appareils sont éteints, l’alimentation est réglée au-dessus de la tension nominale, ou le câble est plus court ou de section plus grande qu’indiqué. Vérifier ces points.',
  },
  'Usually a joint has a high resistance, the cable is longer or thinner than entered, or carries more. Check joints, length and conductor.': {
    de: 'Meist hat eine Verbindung einen hohen Widerstand, oder die Leitung ist länger oder dünner als eingetragen oder führt mehr Strom. Verbindungen, Länge und Leiter prüfen.',
    fr: 'Le plus souvent, un raccordement a une résistance élevée, ou le câble est plus long ou de section plus petite qu’indiqué, ou transporte plus de courant. Vérifier raccordements, longueur et conducteur.',
  },
} satisfies Area;
