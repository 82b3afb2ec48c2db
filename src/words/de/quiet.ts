import type { words as english } from '../en/quiet.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  backup: 'Eine Sicherung machen',
  backupHelp: 'Was seit der letzten gestrickt wurde, ist nur auf diesem Gerät.',
  toBackup: 'Zur Sicherung',
  install: 'Ridgeline auf den Startbildschirm legen',
  installHelp: 'Dann öffnet es sich wie jede App, und der Browser behält den Speicher länger.',
  put: 'Dorthin legen',
  homeFirst: 'Zuerst auf den Startbildschirm legen',
  homeFirstHelp:
    'Auf iPhone und iPad hat die App auf dem Startbildschirm ihren eigenen Speicher, und Safari kann löschen, was sieben Tage nicht besucht wurde. Teilen-Taste, „Zum Home-Bildschirm“; dann dort beginnen.',
  fromBrowser: 'Vorher im Browser gestrickt?',
  fromBrowserHelp:
    'Diese Strickstücke liegen im Speicher des Browsers. Dort eine Sicherung machen und sie hier öffnen.',
  openBackup: 'Eine Sicherung öffnen',
  notNow: 'Nicht jetzt',
  news: 'Neu in dieser Version',
  newsHelp:
    'Ridgeline spricht Französisch. Ein Strickstück geht samt der Stelle, an der du bist, auf ein anderes Gerät. Anleitungen werden aus PDF-Dateien gelesen und in mehreren Größen weitergegeben.',
  newsRead: 'Gelesen',
};
