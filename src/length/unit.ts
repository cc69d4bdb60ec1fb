/** The unit of a bare number and of the sizes that are shown. */
export type Unit = 'inch' | 'mm'

/** 1 in = 25.4 mm exactly. Source: international yard and pound agreement, 1959. */
export const millimetresPerInch = 25.4

/** How many millimetres one of the unit is. */
export function millimetresPer(unit: Unit): number {
  return unit === 'inch' ? millimetresPerInch : 1
}

/** A unit as it may follow a number. */
export type WrittenUnit = 'mm' | 'cm' | 'inch' | 'foot' | 'degree'

const unitWords: Readonly<Record<string, WrittenUnit>> = {
  mm: 'mm',
  cm: 'cm',
  in: 'inch',
  inch: 'inch',
  inches: 'inch',
  ft: 'foot',
  foot: 'foot',
  feet: 'foot',
  deg: 'degree',
  degree: 'degree',
  degrees: 'degree',
}

/** The words that are units, for the nearest right one. */
export const unitNames: readonly string[] = Object.keys(unitWords)

/** The unit that a word stands for, in small or capital letters. */
export function unitOfWord(word: string): WrittenUnit | undefined {
  const small = word.toLowerCase()
  return Object.hasOwn(unitWords, small) ? unitWords[small] : undefined
}

/** How many millimetres one of a written unit of length is. */
export const millimetresPerWritten: Readonly<Record<Exclude<WrittenUnit, 'degree'>, number>> = {
  mm: 1,
  cm: 10,
  inch: millimetresPerInch,
  foot: 12 * millimetresPerInch,
}
