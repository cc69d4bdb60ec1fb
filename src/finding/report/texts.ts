/** The texts that sources speak of, by the name of the file. A place in a text that is not here shows no line. */
export type Texts = ReadonlyMap<string, string>
