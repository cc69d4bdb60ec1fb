import type { Contour } from '../../../src/geometry/shape/contour.ts'
import { arc, line, type Segment } from '../../../src/geometry/shape/segment.ts'
import type { Asked } from './offset-laws.ts'

const at = (x: number, y: number) => ({ x, y })

function chain(segments: readonly Segment[], closed: boolean): Contour {
  return { segments, closed }
}

/** Cases that fuzzing found, each named for what went wrong with it. */
export const foundCases: readonly (readonly [string, Asked])[] = [
  [
    'two arcs that part by less than `coincident` beside their corner were taken to cross there',
    {
      kind: 'regions',
      regions: [
        {
          outer: chain(
            [
              arc(
                at(7.871114792447072, 4.558770896265798),
                at(-7.70873590164773, 13.83659739715396),
                at(27.672585977022607, 55.53071682015975),
                -1,
              ),
              arc(
                at(-7.70873590164773, 13.83659739715396),
                at(-10.314820752344772, -10.584068329654503),
                at(-3.4197304366675834, 1.029501470269457),
                1,
              ),
              arc(
                at(-10.314820752344772, -10.584068329654503),
                at(5.825842409293675, -2.540703165919249),
                at(-7.076847627408384, 3.1347333715045993),
                1,
              ),
              arc(
                at(5.825842409293675, -2.540703165919249),
                at(7.871114792447072, 4.558770896265798),
                at(6.526420507866283, 1.1018148962218735),
                -1,
              ),
            ],
            true,
          ),
          holes: [],
        },
      ],
      delta: 0.14968652450479566,
      options: {},
    },
  ],
  [
    'the arrangement of a bevelled path could not agree on the windings round a vertex',
    {
      kind: 'path',
      path: chain(
        [
          line(at(13.674967014230788, 9.052166840992868), at(8.614897881634533, 10.499455709941685)),
          arc(
            at(8.614897881634533, 10.499455709941685),
            at(10.911754448898137, 19.124470809474587),
            at(11.521289543640751, 14.343814545296395),
            -1,
          ),
          arc(
            at(10.911754448898137, 19.124470809474587),
            at(9.014679798856378, 0.8100762963294983),
            at(24.255247872638336, 8.48685064229849),
            1,
          ),
          arc(
            at(9.014679798856378, 0.8100762963294983),
            at(9.23600229434669, 2.559920377098024),
            at(10.421540486846816, 1.52105338989185),
            -1,
          ),
          line(at(9.23600229434669, 2.559920377098024), at(7.419389337301254, 8.799240663647652)),
          arc(
            at(7.419389337301254, 8.799240663647652),
            at(12.047297931276262, 7.0519632659852505),
            at(9.129300318201196, 6.3257087495807385),
            -1,
          ),
        ],
        false,
      ),
      delta: 0.25,
      options: { join: 'bevel' },
    },
  ],
]
