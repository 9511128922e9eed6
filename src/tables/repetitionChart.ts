/**
 * Share of the one-repetition maximum that allows 1, 2, 3 … repetitions: the common textbook
 * chart (1–10 read in secondary pages; 11, 12, 15 recalled, where one page has 73 and 70 % for 11
 * and 12). Trained people spread widely around it: 6–26 repetitions at 70 % in the squat (Zourdos
 * 2021; read).
 */
export const repetitionChart = {
  reps: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 15],
  share: [1, 0.95, 0.93, 0.9, 0.87, 0.85, 0.83, 0.8, 0.77, 0.75, 0.7, 0.67, 0.65],
  known: 'read',
  source: 'common textbook chart (from 11 repetitions on recalled)',
} as const;
