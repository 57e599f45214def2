import type { Area } from '../translation.ts';

/** What is found of supplies, branches, feeds, outputs and enclosures. */
export const limits = {
  '{name} is asked for {value} and may be used for {limit}: {excess} too much. Move devices to another rail, lower the diversity, or fit a larger supply.': {
    de: '{name}: Strombedarf {value}, nutzbar {limit} – {excess} zu viel. Geräte auf eine andere Schiene legen, den Gleichzeitigkeitsfaktor senken oder eine größere Versorgung einsetzen.',
    fr: '{name} : courant demandé {value}, utilisable {limit}, soit {excess} de trop. Déplacer des appareils vers un autre rail, abaisser le facteur de simultanéité ou prévoir une alimentation plus puissante.',
  },
  '{name} is asked for {value} through a fuse of {limit}: {excess} too much. Share the load over several fused ways, or fit a larger fuse if the conductors carry it.': {
    de: '{name}: Strombedarf {value} über eine Sicherung mit {limit} – {excess} zu viel. Die Last auf mehrere abgesicherte Abgänge verteilen oder eine größere Sicherung einsetzen, wenn die Leiter sie zulassen.',
    fr: '{name} : courant demandé {value} à travers un fusible de {limit}, soit {excess} de trop. Répartir la charge sur plusieurs départs protégés ou prévoir un fusible de calibre supérieur si les conducteurs le permettent.',
  },
  '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move that much to another rail, or fit a larger supply.': {
    de: '{name}: Auslastung {loading} von {rating}, Zielwert {target} um {excess} überschritten. Geräte mit so viel Strom auf eine andere Schiene legen oder eine größere Versorgung einsetzen.',
    fr: '{name} : taux de charge {loading} de {rating}, cible de {target} dépassée de {excess}. Déplacer des appareils pour autant vers un autre rail ou prévoir une alimentation plus puissante.',
  },
  '{name} has no rated current, so nothing can be said of its loading. Enter the rating of one unit in A.': {
    de: '{name}: kein Bemessungsstrom eingetragen; zur Auslastung ist keine Aussage möglich. Den Bemessungsstrom einer Einheit in A eintragen.',
    fr: '{name} : aucun courant assigné indiqué ; rien ne peut être dit du taux de charge. Indiquer le courant assigné d’une unité en A.',
  },
  '{name} gives its full current up to {limit}, and what it gives where it stands is not known. Enter how much it gives less per kelvin.': {
    de: '{name} liefert bis {limit} den vollen Strom; wie viel am Einbauort, ist nicht bekannt. Die Minderung je Kelvin eintragen.',
    fr: '{name} : plein courant jusqu’à {limit} ; le courant disponible à cet emplacement n’est pas connu. Indiquer la réduction par kelvin.',
  },
  '{name} gives its full current up to {limit}, and what it gives where it stands is not known. Enter its enclosure, and complete that on the sheet {sheet}.': {
    de: '{name} liefert bis {limit} den vollen Strom; wie viel am Einbauort, ist nicht bekannt. Das Gehäuse angeben und auf dem Blatt „{sheet}“ vervollständigen.',
    fr: '{name} : plein courant jusqu’à {limit} ; le courant disponible à cet emplacement n’est pas connu. Indiquer l’enveloppe et la compléter sur la feuille « {sheet} ».',
  },
  '{name} carries at least {value}: {missing, plural, one {# device row on it has no known current. Complete it} other {# device rows on it have no known current. Complete them}} to know the rest.': {
    de: '{name} führt mindestens {value}; von {missing, plural, one {# Gerätezeile} other {# Gerätezeilen}} ist der Strom nicht bekannt. Die Angaben vervollständigen, um den Gesamtwert zu erhalten.',
    fr: '{name} : au moins {value} ; courant inconnu pour {missing, plural, one {# ligne d’appareils. La} other {# lignes d’appareils. Les}} compléter pour obtenir la valeur totale.',
  },
  '{name} has no fuse entered: its demand is not checked against one. Enter its rating in A.': {
    de: '{name}: keine Sicherung eingetragen; der Strombedarf wird nicht dagegen geprüft. Den Bemessungsstrom der Sicherung in A eintragen.',
    fr: '{name} : aucun fusible indiqué ; le courant demandé n’est pas vérifié. Indiquer le courant assigné du fusible en A.',
  },
  '{name} has no efficiency entered: its losses are not worked out. Enter it to know them.': {
    de: '{name}: kein Wirkungsgrad eingetragen; die Verlustleistung wird nicht berechnet. Den Wirkungsgrad eintragen.',
    fr: '{name} : aucun rendement indiqué ; les pertes ne sont pas calculées. Indiquer le rendement.',
  },
  '{name} has no enclosure entered: its losses count in none. Choose where it is mounted.': {
    de: '{name}: kein Gehäuse angegeben; die Verlustleistung zählt in keinem. Den Einbauort wählen.',
    fr: '{name} : aucune enveloppe indiquée ; les pertes ne sont comptées dans aucune. Choisir l’emplacement.',
  },
  '{name} serves {purposes} together. Common practice is a separate supply for each: move the devices of the other purposes.': {
    de: '{name}: {purposes} an einer Versorgung. Üblich ist für jede Verwendung eine eigene: die Geräte der anderen Verwendungen umlegen.',
    fr: '{name} : une seule alimentation pour {purposes}. Il est courant d’en prévoir une par usage : déplacer les appareils des autres usages.',
  },
  '{name} carries {value, plural, one {# point} other {# points}} and may carry {limit}: {excess} too many. Move devices to another branch.': {
    de: '{name}: {value, plural, one {# Busplatz} other {# Busplätze}} belegt, zulässig {limit} – {excess} zu viel. Geräte auf eine andere Buslinie legen.',
    fr: '{name} : {value, plural, one {# point} other {# points}} pour une limite de {limit}, soit {excess} de trop. Déplacer des appareils vers une autre ligne de bus.',
  },
  '{name} carries {points, plural, one {# point} other {# points}} of {limit}, {into} into its reserve of {reserve}. Move devices to another branch, or give up part of the reserve.': {
    de: '{name}: {points, plural, one {# Busplatz} other {# Busplätze}} von {limit} belegt, davon {into} in der Reserve von {reserve}. Geräte auf eine andere Buslinie legen oder einen Teil der Reserve aufgeben.',
    fr: '{name} : {points, plural, one {# point} other {# points}} sur {limit}, dont {into} dans la réserve de {reserve}. Déplacer des appareils vers une autre ligne de bus ou renoncer à une partie de la réserve.',
  },
  '{name} carries at least {value, plural, one {# point} other {# points}}: {missing, plural, one {# device row on it has no known number of points. Complete it} other {# device rows on it have no known number of points. Complete them}} to know the rest.': {
    de: '{name}: mindestens {value, plural, one {# Busplatz} other {# Busplätze}} belegt; von {missing, plural, one {# Gerätezeile} other {# Gerätezeilen}} sind die Busplätze nicht bekannt. Die Angaben vervollständigen, um den Gesamtwert zu erhalten.',
    fr: '{name} : au moins {value, plural, one {# point} other {# points}} ; nombre de points inconnu pour {missing, plural, one {# ligne d’appareils. La} other {# lignes d’appareils. Les}} compléter pour obtenir la valeur totale.',
  },
  '{name} is not marked as terminated. Fit the terminating resistors at both ends of the line and mark it.': {
    de: '{name}: kein Busabschluss eingetragen. Abschlusswiderstände an beiden Enden der Linie setzen und den Busabschluss eintragen.',
    fr: '{name} : terminaison non indiquée. Poser les résistances de terminaison aux deux extrémités de la ligne et indiquer la terminaison.',
  },
  '{name} is asked for {value} and is rated {limit}: {excess} too much. Move outputs to another feed, or lower the diversity if not all are on at once.': {
    de: '{name}: Strombedarf {value}, Bemessungsstrom {limit} – {excess} zu viel. Ausgänge auf einen anderen Netzabgang legen oder den Gleichzeitigkeitsfaktor senken, wenn nicht alle zugleich eingeschaltet sind.',
    fr: '{name} : courant demandé {value}, courant assigné {limit}, soit {excess} de trop. Déplacer des sorties vers un autre départ ou abaisser le facteur de simultanéité si toutes ne sont pas en service à la fois.',
  },
  '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: move outputs to another feed, or lower the diversity if not all are on at once.': {
    de: '{name}: Auslastung {loading} von {rating}, Zielwert {target} um {excess} überschritten. Ausgänge auf einen anderen Netzabgang legen oder den Gleichzeitigkeitsfaktor senken, wenn nicht alle zugleich eingeschaltet sind.',
    fr: '{name} : taux de charge {loading} de {rating}, cible de {target} dépassée de {excess}. Déplacer des sorties vers un autre départ ou abaisser le facteur de simultanéité si toutes ne sont pas en service à la fois.',
  },
  '{name} has no rated current, so nothing can be said of its loading. Enter the rating of its protection in A.': {
    de: '{name}: kein Bemessungsstrom eingetragen; zur Auslastung ist keine Aussage möglich. Den Bemessungsstrom der Schutzeinrichtung in A eintragen.',
    fr: '{name} : aucun courant assigné indiqué ; rien ne peut être dit du taux de charge. Indiquer le courant assigné de sa protection en A.',
  },
  '{name} carries at least {value}: {missing, plural, one {# output on it has no known current. Complete it} other {# outputs on it have no known current. Complete them}} to know the rest.': {
    de: '{name} führt mindestens {value}; von {missing, plural, one {# Ausgang} other {# Ausgängen}} ist der Strom nicht bekannt. Die Angaben vervollständigen, um den Gesamtwert zu erhalten.',
    fr: '{name} : au moins {value} ; courant inconnu pour {missing, plural, one {# sortie. La} other {# sorties. Les}} compléter pour obtenir la valeur totale.',
  },
  '{name} switches {value} with a contact rated {limit} for {kind, select, resistive {resistive} lamp {lamp} motor {motor} other {coil}} loads: {excess} too much. Share the load over more outputs, use a stronger contact, or let it switch a contactor.': {
    de: '{name} schaltet {value}, der Kontakt ist für {kind, select, resistive {ohmsche Last} lamp {Lampenlast} motor {Motorlast} other {Spulenlast}} mit {limit} bemessen – {excess} zu viel. Die Last auf mehrere Ausgänge verteilen, einen höher bemessenen Kontakt wählen oder ein Schütz schalten lassen.',
    fr: '{name} : {value} commutés par un contact assigné à {limit} pour {kind, select, resistive {charge résistive} lamp {charge de lampes} motor {charge de moteurs} other {charge de bobines}}, soit {excess} de trop. Répartir la charge sur plusieurs sorties, choisir un contact de valeur assignée plus élevée ou commander un contacteur.',
  },
  '{name} sees an inrush of {value} and its contact may make {limit}: {excess} too much. Share the load over more outputs, or limit the inrush.': {
    de: '{name}: Einschaltstrom {value}, Einschaltvermögen des Kontakts {limit} – {excess} zu viel. Die Last auf mehrere Ausgänge verteilen oder den Einschaltstrom begrenzen.',
    fr: '{name} : courant d’appel {value}, pouvoir de fermeture du contact {limit}, soit {excess} de trop. Répartir la charge sur plusieurs sorties ou limiter le courant d’appel.',
  },
  '{name} is loaded to {loading} of {rating}, above its target of {target} by {excess}: share the load over more outputs, or use a stronger contact.': {
    de: '{name}: Auslastung {loading} von {rating}, Zielwert {target} um {excess} überschritten. Die Last auf mehrere Ausgänge verteilen oder einen höher bemessenen Kontakt wählen.',
    fr: '{name} : taux de charge {loading} de {rating}, cible de {target} dépassée de {excess}. Répartir la charge sur plusieurs sorties ou choisir un contact de valeur assignée plus élevée.',
  },
  '{name} has no contact entered, so its rating is not known. Choose one of the contacts.': {
    de: '{name}: kein Kontakt angegeben, der Bemessungswert ist daher nicht bekannt. Einen der Kontakte wählen.',
    fr: '{name} : aucun contact indiqué, la valeur assignée n’est donc pas connue. Choisir un des contacts.',
  },
  '{name} has no kind of load entered, and a contact is rated for each. Choose resistive, lamp, motor or coil.': {
    de: '{name}: keine Lastart angegeben, und ein Kontakt ist für jede eigens bemessen. Ohmsch, Lampe, Motor oder Spule wählen.',
    fr: '{name} : aucune nature de charge indiquée, et un contact a une valeur assignée pour chacune. Choisir résistive, lampe, moteur ou bobine.',
  },
  '{name} has no power entered, so its current is not known. Enter the power of one load in W; 0 for a spare output.': {
    de: '{name}: keine Leistung eingetragen, der Strom ist daher nicht bekannt. Die Leistung einer Last in W eintragen; 0 für einen Reserveausgang.',
    fr: '{name} : aucune puissance indiquée, le courant n’est donc pas connu. Indiquer la puissance d’une charge en W ; 0 pour une sortie en réserve.',
  },
  '{name}: the contact {contact} has no rating for {kind, select, resistive {resistive} lamp {lamp} motor {motor} other {coil}} loads. Enter it on the sheet {sheet}, or choose another contact.': {
    de: '{name}: Der Kontakt {contact} hat keinen Bemessungswert für {kind, select, resistive {ohmsche Last} lamp {Lampenlast} motor {Motorlast} other {Spulenlast}}. Den Bemessungswert auf dem Blatt „{sheet}“ eintragen oder einen anderen Kontakt wählen.',
    fr: '{name} : le contact {contact} n’a pas de valeur assignée pour {kind, select, resistive {charge résistive} lamp {charge de lampes} motor {charge de moteurs} other {charge de bobines}}. L’indiquer sur la feuille « {sheet} » ou choisir un autre contact.',
  },
  '{name} has no inrush entered: whether the contact may make it is not checked. Enter the peak current of one load in A.': {
    de: '{name}: kein Einschaltstrom eingetragen; ob der Kontakt ihn einschalten darf, wird nicht geprüft. Den Spitzenstrom einer Last in A eintragen.',
    fr: '{name} : aucun courant d’appel indiqué ; le pouvoir de fermeture du contact n’est pas vérifié. Indiquer le courant de crête d’une charge en A.',
  },
  '{name} has an inrush but its contact has none entered that it may make: it is not checked. Enter it on the sheet {sheet}.': {
    de: '{name}: Einschaltstrom eingetragen, für den Kontakt aber kein zulässiger; er wird nicht geprüft. Den zulässigen Einschaltstrom auf dem Blatt „{sheet}“ eintragen.',
    fr: '{name} : courant d’appel indiqué, mais aucun courant admissible pour le contact ; il n’est pas vérifié. Indiquer le courant d’appel admissible sur la feuille « {sheet} ».',
  },
  '{name} has no feed entered: its current counts in none. Choose the feed behind the contact.': {
    de: '{name}: kein Netzabgang angegeben; der Strom zählt bei keinem. Den Netzabgang vor dem Kontakt wählen.',
    fr: '{name} : aucun départ secteur indiqué ; le courant n’est compté dans aucun. Choisir le départ en amont du contact.',
  },
  '{name} gets {value} inside and may get {limit}: {excess} too warm. Use a larger or better ventilated enclosure, or move supplies out of it.': {
    de: '{name}: Innentemperatur {value}, zulässig {limit} – {excess} zu warm. Ein größeres oder besser belüftetes Gehäuse wählen oder Versorgungen herausnehmen.',
    fr: '{name} : température intérieure {value}, admissible {limit}, soit {excess} de trop. Choisir une enveloppe plus grande ou mieux ventilée ou en sortir des alimentations.',
  },
  '{name} gets {inside} inside, {left} below the {most} that it may get. Use a larger or better ventilated enclosure to have more in hand.': {
    de: '{name}: Innentemperatur {inside}, nur {left} unter den zulässigen {most}. Für mehr Reserve ein größeres oder besser belüftetes Gehäuse wählen.',
    fr: '{name} : température intérieure {inside}, seulement {left} au-dessous du maximum admissible de {most}. Choisir une enveloppe plus grande ou mieux ventilée pour plus de marge.',
  },
  '{name}: the loss of {missing, plural, one {# supply} other {# supplies}} in it is not wholly known, so it is at least as warm as shown. Enter their efficiency and complete their demand.': {
    de: '{name}: Die Verlustleistung von {missing, plural, one {# Versorgung} other {# Versorgungen}} darin ist nicht vollständig bekannt; es wird mindestens so warm wie angezeigt. Den Wirkungsgrad eintragen und den Strombedarf vervollständigen.',
    fr: '{name} : pertes de {missing, plural, one {# alimentation} other {# alimentations}} incomplètes ; la température est au moins celle affichée. Indiquer le rendement et compléter le courant demandé.',
  },
  '{name} has no height, so the temperature inside is not known. Enter its outside height in mm.': {
    de: '{name}: Höhe nicht eingetragen, die Innentemperatur ist daher nicht bekannt. Die Außenhöhe in mm eintragen.',
    fr: '{name} : hauteur absente, la température intérieure n’est donc pas connue. Indiquer la hauteur extérieure en mm.',
  },
  '{name} has no width, so the temperature inside is not known. Enter its outside width in mm.': {
    de: '{name}: Breite nicht eingetragen, die Innentemperatur ist daher nicht bekannt. Die Außenbreite in mm eintragen.',
    fr: '{name} : largeur absente, la température intérieure n’est donc pas connue. Indiquer la largeur extérieure en mm.',
  },
  '{name} has no depth, so the temperature inside is not known. Enter its outside depth in mm.': {
    de: '{name}: Tiefe nicht eingetragen, die Innentemperatur ist daher nicht bekannt. Die Außentiefe in mm eintragen.',
    fr: '{name} : profondeur absente, la température intérieure n’est donc pas connue. Indiquer la profondeur extérieure en mm.',
  },
  '{name} has no mounting, so the temperature inside is not known. Choose how it stands.': {
    de: '{name}: Aufstellungsart nicht eingetragen, die Innentemperatur ist daher nicht bekannt. Die Aufstellungsart wählen.',
    fr: '{name} : mode de montage absent, la température intérieure n’est donc pas connue. Choisir le mode de montage.',
  },
  '{name} has no ambient temperature, so the temperature inside is not known. Enter the highest temperature around it in °C.': {
    de: '{name}: Umgebungstemperatur nicht eingetragen, die Innentemperatur ist daher nicht bekannt. Die höchste Temperatur in der Umgebung in °C eintragen.',
    fr: '{name} : température ambiante absente, la température intérieure n’est donc pas connue. Indiquer la température ambiante maximale en °C.',
  },
  '{name} has no loss of its other devices, so the temperature inside is not known. Enter their heat in W; 0 if there are none.': {
    de: '{name}: Verlustleistung der übrigen Geräte nicht eingetragen, die Innentemperatur ist daher nicht bekannt. Ihre Wärme in W eintragen; 0, wenn es keine gibt.',
    fr: '{name} : pertes des autres appareils absentes, la température intérieure n’est donc pas connue. Indiquer leur chaleur en W ; 0 s’il n’y en a pas.',
  },
  '{name} has no highest inside temperature entered: it is not checked against one. Enter the highest that its contents bear in °C.': {
    de: '{name}: keine höchste Innentemperatur eingetragen; die Innentemperatur wird nicht geprüft. Die höchste in °C eintragen, die die Einbauten vertragen.',
    fr: '{name} : aucune température intérieure maximale indiquée ; la température intérieure n’est pas vérifiée. Indiquer la plus élevée que supporte le matériel monté, en °C.',
  },
} satisfies Area;
