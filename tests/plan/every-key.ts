/** A plan that holds every key of the format once at least, and no fault. */
export const everyKey = `paperjig: 1
title: Pier crane
units: inch
precision: 1/64
transfer: auto
projection: first
let:
  board: 7/16
  reach: ~ 3 1/4
stock:
  plank: { thickness: board, width: 4 3/4, length: 30, count: 2, wood: hard maple, label: Plank }
pins:
  axle: { diameter: 3/16, length: 3, count: 2, wood: birch, label: Axle, note: waxed, page: 3 }
parts:
  arm: 7 1/4 x 1 3/8 x plank
  jib:
    label: Jib
    note: The nose points out to sea.
    page: 4
    make: 2
    mirrored: true
    from: plank
    face-edge: top
    reference-end: right
    offset: 1/8
    transfer: template
    wrap: panels
    symmetric: top-bottom
    sides: { left: nose, front: deck }
    outline:
      - { to: [0, 1] }
      - { arc: [1, 0], radius: 1, turn: left }
      - { arc: [4, 1/2], tangent: true, name: belly }
      - { to: [6, 1/2], name: rail, round: 1/4, corner: toe }
      - { to: [6, 1] }
    cuts:
      - { hole: pivot, at: { nose: 1, top: center }, for: axle, fit: turning, label: P, note: last, page: 5 }
      - { hole: , at: { from: pivot, right: 1 1/2 }, for: axle, fit: 1/32, depth: 1/4 }
      - { row: pegs, on: rail, at: { start: 1/4, front: center }, toward: end, spacing: 1/2, count: 3, diameter: 1/8 }
      - { hole: face, on: [deck, back], at: { right: 1/2, top: center }, diameter: 1/8, depth: 1/8 }
      - { row: studs, at: { nose: 2, top: 1/4 }, toward: nose, spacing: 1/2, count: 2, diameter: 1/16 }
      - { hole: tip, at: { concentric: toe }, diameter: 1/16 }
      - { hole: mast, at: { nose: 3, top: center }, diameter: 1/8, lean: { toward: nose, angle: 8 }, bit: brad }
  wheel:
    from: plank
    round: 2 1/4
    inside: 1/2
    cuts:
      - { hole-circle: spokes, at: center, circle: 1 1/2, count: 6, start: 30, diameter: 1/4 }
  gusset:
    thickness: 1/2
    size: 4 x 3
    outline:
      - { to: [0, 0], chamfer: 1/8 }
      - { to: { right: 0, bottom: 0 } }
      - { arc: [3 1/2, 1], bend: 10 }
      - { arc: [3, 1 1/2], through: [3.3, 1 1/4] }
      - { curve: [[2 1/2, 1 3/4], [1 1/2, 2 1/2], { left: 3/4, top: 0 }] }
      - { to: [0, 3] }
    cuts:
      - { cut-out: window, at: { left: 1/2, bottom: 1/2 }, size: 1 1/2 x 1, corners: 1/8 }
      - cut-out: lancet
        symmetric: left-right
        outline: [{ to: [2 3/4, 1/2] }, { to: [3, 1/2] }, { arc: [2 3/4, 1], radius: 1/2, turn: left }]
        entry: { at: { left: 2 3/4, bottom: 5/8 }, bit: 1/16 }
  wedge: { from: plank, size: 7 1/4, taper: { left: 2, right: 1 1/4, angle: 5.9, straight: top } }
  panel:
    size: 6 x 4 x 1/4
    measured: 6 1/64 x 4 x 17/64
    wrap: net
    ends: { right: round }
    corners: { top-left: 1/4, bottom-left: { chamfer: 1/8 } }
    cuts:
      - { grid: g, at: { left: 1/2, bottom: 1/2 }, spacing: 1/2 x 3/4, count: 4 x 3, diameter: 1/8, countersink: 1/4 }
      - { slot: s, at: center, size: 1 1/2 x 1/4, ends: round, angle: 30, depth: 1/8 }
      - { row: r, at: { left: 3, top: 1/2 }, last: { right: 1 }, count: 4, diameter: 1/8 }
      - hole: leg
        at: { right: 2, top: 1 }
        lean: [{ toward: right, angle: 8 }, { toward: top, angle: 5 }]
        diameter: 1/8
        countersink: { diameter: 3/16, angle: 90 }
        bit: { point: twist, angle: 135 }
      - { hole: bolt, at: { right: 2, top: 2 }, diameter: 1/8, counterbore: 1/4 x 1/16 }
      - { hole: stud, at: { right: 2, top: 3 }, diameter: 1/8, counterbore: { diameter: 1/4, depth: 1/16 } }
      - { cut-out: moon, at: { right: 1, bottom: center }, round: 1 }
      - { notch: n, on: left, at: { bottom: center }, size: 1/2 x 1/4 }
  sill:
    size: 6 x 2 x 1/2
    sides: { front: deck, left: nose }
    cuts:
      - { groove: pane, on: [deck, back], at: { bottom: 3/8 }, along: length, width: 1/8, depth: 1/8, label: Pane, note: glass, page: 6 }
      - { groove: dado, at: { nose: 2 }, width: 1/2, depth: 1/8, stopped: { top: 1/2 }, length: 1 }
      - { rebate: lip, on: deck, edge: top, size: 1/4 x 3/8, stopped: { nose: 1/2, right: 1/4 } }
      - { bevel: seat, on: right, angle: 15, short: deck }
      - { chamfer: ease, on: back, edges: all, size: 1/16 }
      - { chamfer: drip, on: bottom, edges: [deck], size: 1/16 x 1/8 }
      - { round-over: brow, edges: [nose, bottom], radius: 1/8 }
      - { engrave: number, at: { right: 1/2, bottom: 7/8 }, text: No 2, height: 1/4, depth: 1/32 }
      - { engrave: anchor, at: { nose: 1, bottom: 3/4 }, lines: [[[0, 0], [1/4, 1/2]], [[0, 1/4], [1/2, 1/4]]] }
  strip: { size: reach x reach / 2 x 1/2, ends: round }
joints:
  - { pin: axle, through: [jib/1.pivot, jib/2.pivot, wheel.spokes.3, wheel.spokes.all] }
  - { tongue: arm.left, into: gusset.window, fit: push }
confirmed: [reach, jib.pivot]
`
