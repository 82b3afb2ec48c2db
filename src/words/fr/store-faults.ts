import type { words as english } from '../en/store-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'storage-full':
    'Il n’y a plus de place sur l’appareil : cela n’a pas pu être noté. Libérez de la place, puis réessayez.',
  'storage-refused':
    'Ce navigateur ne laisse rien garder à Ridgeline, comme dans une fenêtre privée. Ouvrez-le dans une fenêtre ordinaire.',
  'store-not-answering':
    'Le navigateur ne répond pas quand on lui demande d’écrire. Réessayez ; si cela n’aide pas, rechargez la page.',
  'database-newer':
    'Ces ouvrages ont été ouverts par une version plus récente de Ridgeline. Ici ils peuvent être lus, pas changés. Rechargez la page pour y passer.',
  'database-blocked':
    'Ridgeline est encore ouvert dans une fenêtre plus ancienne. Fermez-la, puis rechargez celle-ci.',
  'database-strange':
    'Ce qui est stocké à cette adresse n’est pas ce que Ridgeline a fait. Rien n’a été touché.',
  'migration-failed':
    'Vos ouvrages n’ont pas pu être mis à jour et sont comme ils étaient. Rechargez la page.',
  'not-storable': 'Cela ne peut pas être noté ({detailText}). Rien n’a changé.',
  'text-too-long':
    'Ce texte est trop long ({whereText}) : il a {characters} caractères, et {mostCharacters} peuvent être gardés. Rien n’a changé ; raccourcissez-le et réessayez.',
  'photos-full':
    'Vos photos remplissent une sauvegarde : ensemble elles peuvent avoir {mostMillions} millions d’octets. Enregistrez-en ailleurs et supprimez-les ici, puis réessayez.',
  'no-such-garment': 'Cet ouvrage n’est pas sur cet appareil.',
  'garment-there': 'Cet ouvrage est déjà sur cet appareil. Rien n’a changé.',
  'no-such-make': 'Cette pièce n’est pas sur cet appareil.',
  'no-such-plan': 'Les rangs de cette pièce ne sont pas sur cet appareil.',
  'no-such-entry': 'Cette entrée n’est pas dans le journal.',
  'plan-missing': 'La partie {part} d’une pièce n’a pas encore de rangs.',
  'at-the-end': 'Les {rows} rangs de cette partie sont tous faits.',
  'place-moved': 'Entre-temps, c’est le rang {nextRow} qui vient, pas le rang {row}. Rien n’a été noté.',
  'plan-moved':
    'Les rangs que vous voyiez ne sont pas ceux qui valent maintenant : la pièce a été replanifiée entre-temps. Rien n’a été noté ; regardez le rang qui vient.',
  'row-outside': 'Il n’y a pas de rang {row} dans cette partie ; elle en a {rows}.',
  'no-way-back':
    'Il n’y a plus rien à annuler : c’est déjà annulé, ou une autre sauvegarde est entrée depuis.',
  'kept-unreadable':
    'Ce que vous avez saisi ici a été gardé sous une forme que cette version de Ridgeline ne sait pas lire. Recommencez ; les textes lisibles sont gardés.',
  'nothing-to-undo': 'Il n’y a rien à annuler.',
  'nothing to save': 'Il n’y a encore rien à enregistrer.',
  'app-incomplete':
    'Une partie de Ridgeline n’a pas pu être chargée. Rien n’a changé. Rechargez la page, avec un réseau si vous en avez un.',
  'backup-too-large':
    'Ce fichier est trop grand pour une sauvegarde : il a {sizeMillions} millions de caractères, et au plus {mostMillions} peuvent être lus.',
  'backup-not-json':
    'Ce fichier est abîmé, ou ce n’est pas une sauvegarde. Choisissez le fichier que Ridgeline a enregistré, ou prenez-en un plus ancien.',
  'backup-not-ours': 'Ce fichier n’a pas été enregistré par Ridgeline. Choisissez-en un autre.',
  'backup-newer':
    'Cette sauvegarde a été faite par une version plus récente de Ridgeline (version {version}). Rechargez la page avec un réseau, puis rouvrez le fichier.',
  'backup-damaged': 'Cette sauvegarde est abîmée à {pathText}. Rien n’a changé. Prenez-en une plus ancienne.',
  'backup-not-knittable':
    'Dans cette sauvegarde les rangs de {pieceName} ne peuvent pas être tricotés à partir du rang {row}. Rien n’a changé.',
  'backup-without':
    'Il manque à la sauvegarde : {whatText}. {pathText} n’y est pas comme il faudrait. Cela reste tel quel sur cet appareil ; gardez une sauvegarde plus ancienne qui l’a.',
  'backup-too-full':
    'Ce qui est sur cet appareil fait {sizeMillions} millions de caractères, et une sauvegarde en contient au plus {mostMillions}. Enregistrez des photos ailleurs et supprimez-les ici, puis réessayez.',
  'backup-file-refused':
    'Le navigateur ne laisse plus Ridgeline écrire ce fichier. Autorisez-le à nouveau, ou choisissez un autre fichier.',
  'backup-file-gone':
    'Ce fichier n’a pas pu être écrit : il a peut-être été déplacé, ou son disque est plein ou absent. Réessayez, ou choisissez un autre fichier.',
  'document protected':
    'Ce fichier est fermé par un mot de passe. Ouvrez-le ailleurs, enregistrez-le sans mot de passe, et choisissez cette copie.',
  'document damaged':
    'Ce fichier est abîmé, ou n’a pas été enregistré en entier. Procurez-vous-le de nouveau, ou copiez son texte et collez-le.',
  'document pictures only':
    'Ce fichier contient des images de pages, pas de texte. Ouvrez-le ailleurs : beaucoup de téléphones trouvent les lettres dans une image et permettent de les copier. Collez-les ensuite ici.',
  'document too long':
    'Ce fichier a {pagesNumber} pages, et {mostNumber} au plus sont lues. Enregistrez les pages du modèle dans un fichier à part.',
  'document too large':
    'Ce fichier est trop grand : il a {sizeMillions} millions d’octets, et {mostMillions} millions au plus sont lus. Copiez son texte et collez-le.',
  'document unknown':
    'Aucun texte n’a été trouvé dans ce fichier. Un PDF, un .docx ou un texte simple peut être lu ; pour le reste, copiez le texte et collez-le.',
  'link damaged': 'Ce lien est abîmé ou tronqué. Copiez-le en entier, ou demandez l’ouvrage en fichier.',
  'link not a garment':
    'Ce lien ne contient pas d’ouvrage : {whereText} n’est pas comme il faudrait. Rien n’a changé.',
  'link too long':
    'Ce lien a {characters} caractères ; celui d’un ouvrage en a au plus {mostCharacters}. Demandez l’ouvrage en fichier.',
  'link version':
    'Ce lien a été fait par une version plus récente de Ridgeline (version {version}). Rechargez la page avec un réseau, puis rouvrez le lien.',
  'text missing': 'Le texte d’où cet ouvrage a été lu n’est pas ici.',
  'not stored': 'Le nouveau plan n’a pas pu être enregistré. Réessayez.',
} as const satisfies Translation<typeof english>;
