/** What it does, how it is usually fastened, what should be seen on record; a sentence or two each. */
export type Sentences = readonly [does: string, fastened: string, seen: string];

/** In English and in Japanese, by the id of the kind. */
export type AboutRows = Readonly<Record<string, readonly [en: Sentences, ja: Sentences]>>;
