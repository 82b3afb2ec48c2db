/** What is said by the way where she is not knitting: one line at most. */
export const words = {
  backup: 'Take a backup',
  backupHelp: 'What you knitted since the last one is on this device only.',
  toBackup: 'To the backup',
  install: 'Put Ridgeline on your home screen',
  installHelp: 'It opens like any app, and the browser keeps its storage longer.',
  put: 'Put it there',
  homeFirst: 'Put it on the home screen first',
  homeFirstHelp:
    'On an iPhone or iPad the home-screen app has a store of its own, and Safari may clear a page that is not visited for seven days. Share button, Add to Home Screen; then begin there.',
  fromBrowser: 'Knitted in the browser before?',
  fromBrowserHelp: 'Those garments are in the browser’s own store. Take a backup there and open it here.',
  openBackup: 'Open a backup',
  notNow: 'Not now',
  news: 'New in this version',
  newsHelp:
    'Ridgeline speaks French. A garment goes to another device with its place. A pattern is read from a PDF, and passed on in several sizes.',
  newsRead: 'Read',
} as const;
