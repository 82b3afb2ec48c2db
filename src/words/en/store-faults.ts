/** What the store can refuse, by code (src/store/faults.ts): what is wrong, that nothing was lost, how to mend it. */
export const words = {
  'storage-full':
    'The device has no room left, so this could not be written down. Free some space, then try again.',
  'storage-refused':
    'This browser does not let Ridgeline keep anything, as in a private window. Open it in an ordinary window.',
  'store-not-answering':
    'The browser does not answer when asked to write. Try again; if that does not help, load the page again.',
  'database-newer':
    'These garments were opened by a newer Ridgeline. Here they can be read, not changed. Load the page again to change to the newer one.',
  'database-blocked': 'Ridgeline is still open in an older window. Close that one, then load this one again.',
  'database-strange': 'What is stored at this address is not as Ridgeline made it. Nothing was touched.',
  'migration-failed':
    'Your garments could not be brought up to date and are as they were. Load the page again.',
  'not-storable': 'This cannot be written down ({detailText}). Nothing was changed.',
  'text-too-long':
    'This text is too long ({whereText}): it has {characters} characters, and {mostCharacters} can be kept. Nothing was changed; shorten it and try again.',
  'photos-full':
    'Your photos fill a backup: together they may have {mostMillions} million bytes. Save some elsewhere and delete them here, then try again.',
  'no-such-garment': 'This garment is not on this device.',
  'garment-there': 'This garment is on this device already. Nothing was changed.',
  'no-such-make': 'This piece is not on this device.',
  'no-such-plan': 'The rows of this piece are not on this device.',
  'no-such-entry': 'This entry is not in the log.',
  'plan-missing': 'Part {part} of a piece has no rows yet.',
  'at-the-end': 'All {rows} rows of this part are worked.',
  'place-moved': 'By now row {nextRow} is next, not row {row}. Nothing was written.',
  'plan-moved':
    'The rows that you saw are not those that hold now: the piece was planned anew meanwhile. Nothing was written; look at the row that comes now.',
  'row-outside': 'There is no row {row} in this part; it has {rows}.',
  'no-way-back':
    'There is nothing to take back any more: it was taken back, or another backup came in since.',
  'kept-unreadable':
    'What you typed here was kept in a form that this Ridgeline cannot read. Begin anew; the texts that can be read are kept.',
  'nothing-to-undo': 'There is nothing to take back.',
  'nothing to save': 'There is nothing to save yet.',
  'app-incomplete':
    'A part of Ridgeline could not be fetched. Nothing was changed. Load the page again, with a network if you have one.',
  'backup-too-large':
    'This file is too large for a backup: it has {sizeMillions} million characters, and at most {mostMillions} can be read.',
  'backup-not-json':
    'This file is damaged, or it is no backup. Choose the file that Ridgeline saved, or take an older one.',
  'backup-not-ours': 'This file was not saved by Ridgeline. Choose another one.',
  'backup-newer':
    'This backup was saved by a newer Ridgeline (version {version}). Load the page again with a network, then open the file once more.',
  'backup-damaged': 'This backup is damaged at {pathText}. Nothing was changed. Take an older one.',
  'backup-not-knittable':
    'In this backup the rows of {pieceName} cannot be knitted from row {row} on. Nothing was changed.',
  'backup-without':
    'The backup does not have {whatText}: {pathText} of it is not as it should be. It stays on this device as it is; keep an older backup that has it.',
  'backup-too-full':
    'What is on this device makes {sizeMillions} million characters, and a backup holds at most {mostMillions}. Save some photos elsewhere and delete them here, then try again.',
  'backup-file-refused':
    'The browser does not let Ridgeline write this file any more. Allow it again, or choose another file.',
  'backup-file-gone':
    'This file could not be written: it may have been moved, or its disk is full or away. Try again, or choose another file.',
  'document protected':
    'This file is locked with a password. Open it elsewhere, save it without one, and choose that copy.',
  'document damaged':
    'This file is damaged, or it was not saved whole. Fetch it again, or copy its text and paste it.',
  'document pictures only':
    'This file has pictures of pages, no text. Open it elsewhere: many phones find the letters in a picture and let you mark and copy them. Then paste them here.',
  'document too long':
    'This file has {pagesNumber} pages, and up to {mostNumber} are read. Save the pages of the pattern as a file of their own.',
  'document too large':
    'This file is too large: it has {sizeMillions} million bytes, and up to {mostMillions} million are read. Copy its text and paste it.',
  'document unknown':
    'No text was found in this file. A PDF, a .docx or a plain text can be read; from anything else copy the text and paste it.',
  'link damaged': 'This link is damaged or cut off. Copy the whole of it, or ask for the garment as a file.',
  'link not a garment':
    'This link does not hold a garment: {whereText} is not as it should be. Nothing was changed.',
  'link too long':
    'This link has {characters} characters; a garment’s link has at most {mostCharacters}. Ask for the garment as a file.',
  'link version':
    'This link was made by a newer Ridgeline (version {version}). Load the page again with a network, then open the link once more.',
  'text missing': 'The text that this garment was read from is not here.',
  'not stored': 'The new plan could not be stored. Try again.',
} as const;
