/** Characters of a code that a camera still reads from a phone's screen: version 13 of ISO/IEC 18004, 69 modules wide. */
export const CODE_ROOM = 400;
