import type { Area } from './translation.ts';

/** What the element says of drafts and files, and in a form. */
export const drafts = {
  'Draft of {time} restored.': {
    de: 'Entwurf ({time}) wiederhergestellt.',
    fr: 'Brouillon ({time}) restauré.',
  },
  'There is another draft, of {time}.': {
    de: 'Es gibt einen weiteren Entwurf ({time}).',
    fr: 'Il existe un autre brouillon ({time}).',
  },
  'Draft of {time} discarded.': {
    de: 'Entwurf ({time}) verworfen.',
    fr: 'Brouillon ({time}) abandonné.',
  },
  'The draft of {time} was written by another version of this software. It is kept as it is: save it as a file, or open this page with that version.': {
    de: 'Der Entwurf ({time}) stammt aus einer anderen Version dieser Software. Er bleibt unverändert erhalten: als Datei speichern oder diese Seite mit jener Version öffnen.',
    fr: 'Le brouillon ({time}) provient d’une autre version de ce logiciel. Il est conservé tel quel : l’enregistrer dans un fichier ou ouvrir cette page avec cette version.',
  },
  'The draft of {time} is damaged and cannot be shown. It is kept as it is: save it as a file, and open that file to restore what can be read of it.': {
    de: 'Der Entwurf ({time}) ist beschädigt und kann nicht angezeigt werden. Er bleibt unverändert erhalten: als Datei speichern und diese öffnen, um das noch Lesbare wiederherzustellen.',
    fr: 'Le brouillon ({time}) est endommagé et ne peut pas être affiché. Il est conservé tel quel : l’enregistrer dans un fichier et ouvrir ce fichier pour restaurer ce qui reste lisible.',
  },
  'The draft is damaged: what it began with cannot be read, so nothing of it can be restored. Go on from the schedule file that was saved last.': {
    de: 'Der Entwurf ist beschädigt: Sein Anfangsstand ist nicht lesbar, daher lässt sich nichts wiederherstellen. Mit der zuletzt gespeicherten Datei der Lastaufstellung weiterarbeiten.',
    fr: 'Le brouillon est endommagé : son état initial est illisible, rien ne peut donc en être restauré. Repartir du dernier fichier de bilan de charge enregistré.',
  },
  'The draft is damaged from action {number} of {all} on; everything before it is restored': {
    de: 'Der Entwurf ist ab Aktion {number} von {all} beschädigt; alles davor ist wiederhergestellt',
    fr: 'Le brouillon est endommagé à partir de l’action {number} sur {all} ; tout ce qui précède est restauré',
  },
  '{file}: draft restored': {
    de: '{file}: Entwurf wiederhergestellt',
    fr: '{file} : brouillon restauré',
  },
  'The draft is open in another tab. What is entered here is kept as a draft of its own.': {
    de: 'Der Entwurf ist in einem anderen Tab geöffnet. Was hier eingegeben wird, bleibt als eigener Entwurf erhalten.',
    fr: 'Le brouillon est ouvert dans un autre onglet. Ce qui est saisi ici est conservé dans un brouillon distinct.',
  },
  'The draft was changed elsewhere, as in another tab. What is shown here is kept as a draft of its own from now on.': {
    de: 'Der Entwurf wurde an anderer Stelle geändert, etwa in einem anderen Tab. Was hier zu sehen ist, bleibt von nun an als eigener Entwurf erhalten.',
    fr: 'Le brouillon a été modifié ailleurs, par exemple dans un autre onglet. Ce qui est affiché ici est désormais conservé dans un brouillon distinct.',
  },
  'This browser keeps no drafts here, as in a private window. Save the schedule as a file before leaving the page.': {
    de: 'Dieser Browser bewahrt hier keine Entwürfe auf, etwa in einem privaten Fenster. Die Lastaufstellung vor dem Verlassen der Seite als Datei speichern.',
    fr: 'Ce navigateur ne conserve pas de brouillons ici, comme dans une fenêtre privée. Enregistrer le bilan de charge dans un fichier avant de quitter la page.',
  },
  'This browser has no room for the draft. Save the schedule as a file before leaving the page.': {
    de: 'Dieser Browser hat keinen Platz für den Entwurf. Die Lastaufstellung vor dem Verlassen der Seite als Datei speichern.',
    fr: 'Ce navigateur n’a plus de place pour le brouillon. Enregistrer le bilan de charge dans un fichier avant de quitter la page.',
  },
  'The draft could not be written. Save the schedule as a file before leaving the page.': {
    de: 'Der Entwurf konnte nicht geschrieben werden. Die Lastaufstellung vor dem Verlassen der Seite als Datei speichern.',
    fr: 'Le brouillon n’a pas pu être écrit. Enregistrer le bilan de charge dans un fichier avant de quitter la page.',
  },
  'No draft is kept, because a part of the software could not be fetched. Save the schedule as a file before leaving the page.': {
    de: 'Es bleibt kein Entwurf erhalten, weil ein Teil der Software nicht geladen werden konnte. Die Lastaufstellung vor dem Verlassen der Seite als Datei speichern.',
    fr: 'Aucun brouillon n’est conservé, car une partie du logiciel n’a pas pu être chargée. Enregistrer le bilan de charge dans un fichier avant de quitter la page.',
  },
  'Put this notice away': {
    de: 'Meldung ausblenden',
    fr: 'Masquer ce message',
  },
  'Show draft': {
    de: 'Entwurf anzeigen',
    fr: 'Afficher le brouillon',
  },
  'Restore draft': {
    de: 'Entwurf wiederherstellen',
    fr: 'Restaurer le brouillon',
  },
  'Save as a file': {
    de: 'Als Datei speichern',
    fr: 'Enregistrer dans un fichier',
  },
  'Discard draft': {
    de: 'Entwurf verwerfen',
    fr: 'Abandonner le brouillon',
  },
  'The server answered {status}. Check the address, or open a file instead.': {
    de: 'Der Server antwortete mit {status}. Die Adresse prüfen oder stattdessen eine Datei öffnen.',
    fr: 'Le serveur a répondu {status}. Vérifier l’adresse ou ouvrir plutôt un fichier.',
  },
  'It could not be reached. Check the address and the connection, or open a file instead.': {
    de: 'Die Adresse ist nicht erreichbar. Adresse und Verbindung prüfen oder stattdessen eine Datei öffnen.',
    fr: 'L’adresse est injoignable. Vérifier l’adresse et la connexion, ou ouvrir plutôt un fichier.',
  },
  '{file} opened': {
    de: '{file} geöffnet',
    fr: '{file} ouvert',
  },
  '{sheet}: {n, plural, one {# row} other {# rows}} from {file}': {
    de: '{sheet}: {n, plural, one {# Zeile} other {# Zeilen}} aus {file}',
    fr: '{sheet} : {n, plural, one {# ligne} other {# lignes}} de {file}',
  },
  '{sheet}: {n, plural, one {# row} other {# rows}} from {file} in place of {before}': {
    de: '{sheet}: {n, plural, one {# Zeile} other {# Zeilen}} aus {file} statt {before}',
    fr: '{sheet} : {n, plural, one {# ligne} other {# lignes}} de {file} à la place de {before}',
  },
  '{sheet}: {n, plural, one {# row} other {# rows}} from {file} added to {before}': {
    de: '{sheet}: {n, plural, one {# Zeile} other {# Zeilen}} aus {file} zu {before} hinzugefügt',
    fr: '{sheet} : {n, plural, one {# ligne} other {# lignes}} de {file} en plus de {before}',
  },
  '{problem} If it is a list of counts off drawings, read it with Takeoff.': {
    de: '{problem} Ist es eine Mengenliste nach Plänen, sie mit „Mengenauszug“ einlesen.',
    fr: '{problem} S’il s’agit d’une liste de quantités relevées sur plans, la lire avec « Métré ».',
  },
  'The value': {
    de: 'Der Wert',
    fr: 'La valeur',
  },
  'Saved as {file}': {
    de: 'Gespeichert als {file}',
    fr: 'Enregistré sous {file}',
  },
  '{sheet} saved as {file}': {
    de: '{sheet} gespeichert als {file}',
    fr: '{sheet} enregistré sous {file}',
  },
  '{sheet}, row {row}, {column}: {text} – {problem}': {
    de: '{sheet}, Zeile {row}, {column}: {text} – {problem}',
    fr: '{sheet}, ligne {row}, {column} : {text} – {problem}',
  },
  'Undone: {action}': {
    de: 'Rückgängig gemacht: {action}',
    fr: 'Annulé : {action}',
  },
  'Redone: {action}': {
    de: 'Wiederholt: {action}',
    fr: 'Rétabli : {action}',
  },
  '{open, plural, one {# finding is over a limit: put it right or accept it.} other {# findings are over a limit: put them right or accept them.}}': {
    de: '{open, plural, one {# Befund überschreitet eine Grenze: beheben oder akzeptieren.} other {# Befunde überschreiten eine Grenze: beheben oder akzeptieren.}}',
    fr: '{open, plural, one {# constat dépasse une limite : y remédier ou l’accepter.} other {# constats dépassent une limite : y remédier ou les accepter.}}',
  },
} satisfies Area;
