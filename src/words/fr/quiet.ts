import type { words as english } from '../en/quiet.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  backup: 'Faites une sauvegarde',
  backupHelp: 'Ce que vous avez tricoté depuis la dernière n’est que sur cet appareil.',
  toBackup: 'Aller à la sauvegarde',
  install: 'Mettez Ridgeline sur l’écran d’accueil',
  installHelp: 'Il s’ouvre comme toute application, et le navigateur garde son stockage plus longtemps.',
  put: 'L’y mettre',
  homeFirst: 'Mettez-le d’abord sur l’écran d’accueil',
  homeFirstHelp:
    'Sur un iPhone ou un iPad, l’application de l’écran d’accueil a son propre stockage, et Safari peut effacer une page qui n’est pas ouverte pendant sept jours. Bouton Partager, « Sur l’écran d’accueil » ; puis commencez là.',
  fromBrowser: 'Déjà tricoté dans le navigateur ?',
  fromBrowserHelp:
    'Ces ouvrages sont dans le stockage du navigateur. Faites-y une sauvegarde et ouvrez-la ici.',
  openBackup: 'Ouvrir une sauvegarde',
  notNow: 'Pas maintenant',
  news: 'Nouveautés de cette version',
  newsHelp:
    'Ridgeline parle français. Un ouvrage passe sur un autre appareil avec l’endroit où vous en êtes. Un modèle se lit depuis un PDF et se transmet en plusieurs tailles.',
  newsRead: 'Lu',
};
