/* The yardstick problem (see ../yardstick.mjs) by SUNDIALS CVODE: BDF, banded matrix, analytic Jacobian, memory reused.
 *
 * Same equations per mole of vapour raised, same table of relative volatility, the bare minimum of unknowns (kettle,
 * plates, condenser: no clock, no receiver).
 *
 *   cvode TABLE REPEATS TOLERANCE...
 *
 * TABLE holds little-endian doubles: the number of intervals, then 4 coefficients an interval. Prints a line for each
 * tolerance: tolerance, median ms, steps, right-hand sides, then the 180 mole fractions at the spout.
 * Build: cc -O3 -march=native cvode.c -lsundials_cvode -lsundials_nvecserial -lm */
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

enum { PLATES = 20, SIZE = PLATES + 2, OUTPUTS = 180 };
static const double RETURNED = 0.75, DRAWN = 0.25, HELD = 2, CONDENSER = 1, KETTLE = 5200, FEED = 0.0405;
static const double INTERVAL = 60 * 0.13;
static double *table;
static int intervals;

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

static int side(realtype b, N_Vector state, N_Vector rate, void *unused) {
  (void)unused;
  const double *u = NV_DATA_S(state);
  double *f = NV_DATA_S(rate);
  double below = vapour(u[0] / (KETTLE - DRAWN * b));
  f[0] = RETURNED * u[1] - below;
  for (int i = 1; i <= PLATES; i++) {
    double y = vapour(u[i]);
    f[i] = (RETURNED * (u[i + 1] - u[i]) + below - y) / HELD;
    below = y;
  }
  f[SIZE - 1] = (below - u[SIZE - 1]) / CONDENSER;
  return 0;
}

static int jacobian(realtype b, N_Vector state, N_Vector rate, SUNMatrix J, void *unused, N_Vector t1, N_Vector t2,
                    N_Vector t3) {
  (void)rate, (void)unused, (void)t1, (void)t2, (void)t3;
  const double *u = NV_DATA_S(state);
  double amount = KETTLE - DRAWN * b;
  double slope = vapour_slope(u[0] / amount) / amount;
  SM_ELEMENT_B(J, 0, 0) = -slope;
  SM_ELEMENT_B(J, 0, 1) = RETURNED;
  for (int i = 1; i <= PLATES; i++) {
    SM_ELEMENT_B(J, i, i - 1) = slope / HELD;
    slope = vapour_slope(u[i]);
    SM_ELEMENT_B(J, i, i) = (-RETURNED - slope) / HELD;
    SM_ELEMENT_B(J, i, i + 1) = RETURNED / HELD;
  }
  SM_ELEMENT_B(J, SIZE - 1, SIZE - 2) = slope / CONDENSER;
  SM_ELEMENT_B(J, SIZE - 1, SIZE - 1) = -1 / CONDENSER;
  return 0;
}

static double now_ms(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return 1e3 * t.tv_sec + 1e-6 * t.tv_nsec;
}
static int by_size(const void *a, const void *b) {
  double d = *(const double *)a - *(const double *)b;
  return (d > 0) - (d < 0);
}

int main(int argc, char **argv) {
  if (argc < 4) return fprintf(stderr, "usage: cvode TABLE REPEATS TOLERANCE...\n"), 2;
  FILE *file = fopen(argv[1], "rb");
  double count;
  if (!file || fread(&count, sizeof count, 1, file) != 1) return fprintf(stderr, "cannot read %s\n", argv[1]), 1;
  intervals = (int)count;
  table = malloc(4 * intervals * sizeof *table);
  if (fread(table, sizeof *table, 4 * intervals, file) != (size_t)(4 * intervals)) return 1;
  int repeats = atoi(argv[2]);

  SUNContext context;
  SUNContext_Create(NULL, &context);
  N_Vector u = N_VNew_Serial(SIZE, context), weights = N_VNew_Serial(SIZE, context);
  SUNMatrix J = SUNBandMatrix(SIZE, 1, 1, context);
  SUNLinearSolver solver = SUNLinSol_Band(u, J, context);
  void *cvode = CVodeCreate(CV_BDF, context);
  double *times = malloc(repeats * sizeof *times), spout[OUTPUTS];
  N_VConst(FEED, u);
  CVodeInit(cvode, side, 0, u);
  CVodeSVtolerances(cvode, 0, weights);
  CVodeSetLinearSolver(cvode, solver, J);
  CVodeSetJacFn(cvode, jacobian);
  CVodeSetMaxNumSteps(cvode, 1000000);

  for (int a = 3; a < argc; a++) {
    double tolerance = atof(argv[a]);
    N_VConst(tolerance, weights);
    NV_Ith_S(weights, 0) = tolerance * 5241 * 0.05;
    CVodeSVtolerances(cvode, 0, weights);
    long steps = 0, sides = 0;
    for (int r = 0; r < repeats; r++) {
      double start = now_ms(), b;
      N_VConst(FEED, u);
      NV_Ith_S(u, 0) = FEED * KETTLE;
      CVodeReInit(cvode, 0, u);
      for (int i = 0; i < OUTPUTS; i++) {
        if (CVode(cvode, (i + 1) * INTERVAL, u, &b, CV_NORMAL) < 0) return fprintf(stderr, "CVODE failed\n"), 1;
        spout[i] = NV_Ith_S(u, SIZE - 1);
      }
      times[r] = now_ms() - start;
      CVodeGetNumSteps(cvode, &steps);
      CVodeGetNumRhsEvals(cvode, &sides);
    }
    qsort(times, repeats, sizeof *times, by_size);
    printf("%s %.5f %ld %ld", argv[a], times[repeats / 2], steps, sides);
    for (int i = 0; i < OUTPUTS; i++) printf(" %.15g", spout[i]);
    printf("\n");
  }
  return 0;
}
