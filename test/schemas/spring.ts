/** A season that is planned again: what stands below `again:` is each test's own. */
export const spring = `
id: spring
name: Spring
climate: deBilt
season: { from: '2031-03-03', to: '2031-07-27' }
beds: [{ name: Bed, mode: siphon, length_mm: 2000, width_mm: 1000 }]
wishes: [{ crop: lettuceHead, perWeek: 2, unit: head }, { crop: radish, perWeek: 1, unit: bunch }]
again:
`;
