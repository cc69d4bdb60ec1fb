/** The unit of a bare number and of the sizes that are shown. */
export type Unit = 'inch' | 'mm'

export type LengthUnit = 'mm' | 'cm' | 'inch' | 'foot'

/** A unit as it may follow a number. */
export type WrittenUnit = LengthUnit | 'degree'

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

/**
 * The units of length: their size in tenths of a millimetre, all of them whole numbers. 1 in = 25.4 mm exactly.
 * Source: international yard and pound agreement, 1959.
 */
const tenths: Readonly<Record<LengthUnit, number>> = { mm: 10, cm: 100, inch: 254, foot: 3048 }

/** For what is measured in inches by its nature, such as paper. A size in a plan goes through `toMillimetres`. */
export const millimetresPerInch = tenths.inch / 10

/**
 * So many of a unit in millimetres. A fraction of an inch to any power of two gives the double nearest to the
 * true length, so that 3 in and 76.2 mm are the same number.
 */
export function toMillimetres(value: number, unit: LengthUnit): number {
  return (value * tenths[unit]) / 10
}

/** A length in mm as so many of a unit. */
export function fromMillimetres(mm: number, unit: LengthUnit): number {
  return (mm * 10) / tenths[unit]
}
