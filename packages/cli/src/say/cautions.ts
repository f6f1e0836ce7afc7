/** What stands below every explanation for people. */
export const caution =
  "A help for competent people. Local codes, the maker's instructions and licensed practice come first. " +
  'A system under test is out of service: tell those who monitor it before, and when it is back. ' +
  'Where the numbers come from: "beamkeep numbers".';
