import type { FindingOf } from '../../finding/finding.ts'
import { degree, mm, placeOfPart } from '../place.ts'
import { noLimit, type Rule } from '../rule.ts'

/** A taper of which the drawing gives both ends and the angle, and they are not of one taper. */
export const taperDisagrees: Rule<'taper-disagrees'> = {
  find: ({ parts }) =>
    parts.flatMap(({ part }): FindingOf<'taper-disagrees'>[] => {
      const { taper } = part
      if (taper?.disagreement === undefined) return []
      const { drawnAngle, statedAngle, widthByAngle } = taper.disagreement
      const source = taper.angle?.source ?? part.source
      return [
        {
          rule: 'taper-disagrees',
          severity: 'error',
          places: [{ ...placeOfPart(part), source }],
          measured: degree(statedAngle),
          limit: degree(drawnAngle),
          facts: {
            drawnAngle: degree(drawnAngle),
            statedAngle: degree(statedAngle),
            widthByAngle: mm(widthByAngle),
          },
        },
      ]
    }),
  explanation: {
    purpose:
      'The widths of two ends and the angle between them say the same thing twice. Where they disagree the drawing is wrong, and the saw can be set by one of them only.',
    limit: noLimit,
    origin: 'far end = near end + length × tan(angle), from the right triangle under the slope',
  },
}
