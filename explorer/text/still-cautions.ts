// Cautions as plain sentences, for the margin of a page. Each defers to who knows the still. Common practice, no published source, but for
// what lights when: ignition and limits in air by NFPA 497 (2008) and IEC 60079-20-1 (2010), density by molar mass.

const DEFERS = 'Follow local codes, the maker’s instructions and licensed practice.';

export const stillCautions = {
  spout:
    'Alcohol vapour is heavier than air and creeps along the floor. From 3 % in air it lights: at a flame, a spark, or a surface of some 360 °C. Catch spirit cool and away from flame, let fresh air in, and never close the still. Follow local codes and the maker’s instructions.',
  kettle: `Never let the kettle run below its heating surface. What is left is hot enough to scald. Never open a boiling still: heat off first, and a vent that opens by itself lets air in as it cools. ${DEFERS}`,
  heating: `Never leave a heated still alone. If the cooling water fails, heat off at once: vapour is coming out of the spout. Leave room in the kettle: it swells, and a wash froths and boils over into the condenser. A gas burner makes carbon monoxide: its fumes go outdoors, with a detector in the room. ${DEFERS}`,
  cooling: `To shut down: heat off, and water on until nothing more comes. A cooling still draws a vacuum: it can collapse, and it sucks a doubler’s liquid back through the vapour pipe. A vent or vacuum breaker must open by itself. Never open a boiling still. ${DEFERS}`,
  vacuum:
    'A vessel under vacuum can implode, and one above the pressure of the air can burst. Vacuum distillation needs vessels, condensers and pumps rated for it and licensed practice; it is not done on these pages. Follow local codes and the maker’s instructions.',
  pouring: `Strong spirit gives off vapour that can be lit at room temperature. Pour and mix away from flame and sparks, with fresh air, vessels open or vented and earthed. Pour spirit into water slowly: it warms. ${DEFERS}`,
} as const;
