/* The yardstick problem (../yardstick.mjs) per mole of vapour raised, for the peers: the same equations, the same table of relative
 * volatility, the bare minimum of unknowns (kettle, plates, condenser: no clock, no receiver). */
#include <stdio.h>
#include <stdlib.h>

enum { PLATES = 20, SIZE = PLATES + 2, OUTPUTS = 180 };
static const double RETURNED = 0.75, DRAWN = 0.25, HELD = 2, CONDENSER = 1, KETTLE = 5200, FEED = 0.0405;
static const double CHARGE = 5241, INTERVAL = 60 * 0.13;
static double *table;
static int intervals;

/* Reads little-endian doubles: the number of intervals, then 4 coefficients an interval. 0 when it could. */
int read_table(const char *path) {
  FILE *file = fopen(path, "rb");
  double count;
  if (!file || fread(&count, sizeof count, 1, file) != 1) return 1;
  intervals = (int)count;
  table = malloc(4 * intervals * sizeof *table);
  int missing = fread(table, sizeof *table, 4 * intervals, file) != (size_t)(4 * intervals);
  fclose(file);
  return missing;
}

static inline double volatility(double x, double *slope) {
  double position = x * intervals;
  int k = position <= 0 ? 0 : position >= intervals ? intervals - 1 : (int)position;
  double s = position - k;
  const double *c = table + 4 * k;
  if (slope) *slope = (c[1] + s * (2 * c[2] + s * 3 * c[3])) * intervals;
  return c[0] + s * (c[1] + s * (c[2] + s * c[3]));
}
static inline double vapour(double x) {
  double a = volatility(x, NULL);
  return a * x / (1 + (a - 1) * x);
}
static inline double vapour_slope(double x) {
  double da, a = volatility(x, &da), d = 1 + (a - 1) * x;
  return (a + da * x * (1 - x)) / (d * d);
}

/* f = du/db. */
void column_side(double b, const double *u, double *f) {
  double below = vapour(u[0] / (KETTLE - DRAWN * b));
  f[0] = RETURNED * u[1] - below;
  for (int i = 1; i <= PLATES; i++) {
    double y = vapour(u[i]);
    f[i] = (RETURNED * (u[i + 1] - u[i]) + below - y) / HELD;
    below = y;
  }
  f[SIZE - 1] = (below - u[SIZE - 1]) / CONDENSER;
}

/* The three diagonals of df/du: lower[i] = J[i][i-1], upper[i] = J[i][i+1]. */
static void column_diagonals(double b, const double *u, double *lower, double *middle, double *upper) {
  double amount = KETTLE - DRAWN * b;
  double slope = vapour_slope(u[0] / amount) / amount;
  middle[0] = -slope;
  upper[0] = RETURNED;
  for (int i = 1; i <= PLATES; i++) {
    lower[i] = slope / HELD;
    slope = vapour_slope(u[i]);
    middle[i] = (-RETURNED - slope) / HELD;
    upper[i] = RETURNED / HELD;
  }
  lower[SIZE - 1] = slope / CONDENSER;
  middle[SIZE - 1] = -1 / CONDENSER;
}

/* The whole Jacobian, row by row; what is outside the diagonals is left as it is. */
void column_dense(double b, const double *u, double *J) {
  double lower[SIZE], middle[SIZE], upper[SIZE];
  column_diagonals(b, u, lower, middle, upper);
  for (int i = 0; i < SIZE; i++) {
    J[i * SIZE + i] = middle[i];
    if (i > 0) J[i * SIZE + i - 1] = lower[i];
    if (i < SIZE - 1) J[i * SIZE + i + 1] = upper[i];
  }
}

/* The packed banded Jacobian, (3, SIZE) row by row: packed[i - j + 1][j] = J[i][j]. */
void column_banded(double b, const double *u, double *packed) {
  double lower[SIZE], middle[SIZE], upper[SIZE];
  column_diagonals(b, u, lower, middle, upper);
  for (int i = 0; i < SIZE; i++) {
    packed[SIZE + i] = middle[i];
    if (i > 0) packed[2 * SIZE + i - 1] = lower[i];
    if (i < SIZE - 1) packed[i + 1] = upper[i];
  }
}

/* What the library's own error weights are (lib/run/engines/equal-flows): amounts at a thousandth of the charge, the spout four times as strict, plates
 * by what the spout feels of them. */
void column_weights(double tolerance, const double *u, double *weight) {
  double gain = 1;
  weight[0] = tolerance * CHARGE * 0.001;
  weight[SIZE - 1] = tolerance / 4;
  for (int i = PLATES; i >= 1; i--) {
    gain = (RETURNED * gain + DRAWN) / vapour_slope(u[i]);
    gain = gain < 1 ? 1 : gain > 10 ? 10 : gain;
    weight[i] = tolerance * gain;
  }
}
