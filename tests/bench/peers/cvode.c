/* The yardstick problem by SUNDIALS CVODE: BDF, banded matrix, analytic Jacobian, memory reused.
 *
 *   cvode TABLE REPEATS TOLERANCE...
 *
 * Each tolerance is run with even error weights (plates and spout alike, the kettle's amount at a twentieth of the charge) and
 * with the library's. Prints a line for each: 'even' or 'ours', tolerance, least and median ms, steps, right-hand sides, 180 mole fractions at the spout.
 * Build: cc -O3 -march=native cvode.c -lsundials_cvode -lsundials_nvecserial -lm */
#include "column.h"
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

static double tolerance;

static int side(realtype b, N_Vector state, N_Vector rate, void *unused) {
  (void)unused;
  column_side(b, NV_DATA_S(state), NV_DATA_S(rate));
  return 0;
}

static int jacobian(realtype b, N_Vector state, N_Vector rate, SUNMatrix J, void *unused, N_Vector t1, N_Vector t2,
                    N_Vector t3) {
  (void)rate, (void)unused, (void)t1, (void)t2, (void)t3;
  double lower[SIZE], middle[SIZE], upper[SIZE];
  column_diagonals(b, NV_DATA_S(state), lower, middle, upper);
  for (int i = 0; i < SIZE; i++) {
    SM_ELEMENT_B(J, i, i) = middle[i];
    if (i > 0) SM_ELEMENT_B(J, i, i - 1) = lower[i];
    if (i < SIZE - 1) SM_ELEMENT_B(J, i, i + 1) = upper[i];
  }
  return 0;
}

static int our_weights(N_Vector state, N_Vector inverse, void *unused) {
  (void)unused;
  double weight[SIZE];
  column_weights(tolerance, NV_DATA_S(state), weight);
  for (int i = 0; i < SIZE; i++) NV_Ith_S(inverse, i) = 1 / weight[i];
  return 0;
}

static double now_ms(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t); /* what else the machine does is not counted */
  return 1e3 * t.tv_sec + 1e-6 * t.tv_nsec;
}

static int by_size(const void *a, const void *b) {
  double d = *(const double *)a - *(const double *)b;
  return (d > 0) - (d < 0);
}

int main(int argc, char **argv) {
  if (argc < 4) return fprintf(stderr, "usage: cvode TABLE REPEATS TOLERANCE...\n"), 2;
  if (read_table(argv[1])) return fprintf(stderr, "cannot read %s\n", argv[1]), 1;
  int repeats = atoi(argv[2]);

  SUNContext context;
  SUNContext_Create(NULL, &context);
  N_Vector u = N_VNew_Serial(SIZE, context), weights = N_VNew_Serial(SIZE, context);
  SUNMatrix J = SUNBandMatrix(SIZE, 1, 1, context);
  SUNLinearSolver solver = SUNLinSol_Band(u, J, context);
  void *cvode = CVodeCreate(CV_BDF, context);
  double *times = malloc(repeats * sizeof *times), spout[OUTPUTS];
  N_VConst(FEED, u);
  N_VConst(1, weights);
  CVodeInit(cvode, side, 0, u);
  CVodeSVtolerances(cvode, 0, weights);
  CVodeSetLinearSolver(cvode, solver, J);
  CVodeSetJacFn(cvode, jacobian);
  CVodeSetMaxNumSteps(cvode, 1000000);

  for (int ours = 0; ours < 2; ours++) {
    for (int a = 3; a < argc; a++) {
      tolerance = atof(argv[a]);
      N_VConst(tolerance, weights);
      NV_Ith_S(weights, 0) = tolerance * CHARGE * 0.05;
      if (ours) CVodeWFtolerances(cvode, our_weights);
      else CVodeSVtolerances(cvode, 0, weights);
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
      printf("%s %s %.5f %.5f %ld %ld", ours ? "ours" : "even", argv[a], times[0], times[repeats / 2], steps, sides);
      for (int i = 0; i < OUTPUTS; i++) printf(" %.15g", spout[i]);
      printf("\n");
    }
  }
  return 0;
}
