/**
 * A backup's ending and media type (RFC 6838, vendor tree, with the suffix of RFC 6839). The ending keeps `.json` at its
 * end: a file chooser that knows no other type still shows the file, and anything that reads JSON opens it.
 */
export const BACKUP_ENDING = '.ridgeline.json';
export const BACKUP_TYPE = 'application/vnd.ridgeline+json';
