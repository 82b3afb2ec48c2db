/** What came of beginning something of which one is kept while it is made. */
export type Begun = 'taken' | 'another is begun' | 'not kept';
