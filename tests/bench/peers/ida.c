/* The train by SUNDIALS IDA: banded matrix, analytic Jacobian, memory reused.
 *
 *   ida TRAIN REPEATS TOLERANCE...
 *
 * Each tolerance is run with even error weights (amounts and energies by what a holder holds, vapours by 1) and with the library's.
 * Prints a line for each: 'even' or 'ours', tolerance, least and median ms, steps, right-hand sides, Jacobians, mole fractions at the spout every minute.
 * Build: cc -O3 -march=native ida.c -lsundials_ida -lsundials_nvecserial -lm */
#include "train.h"
#include <ida/ida.h>
#include <nvector/nvector_serial.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

static int residual(realtype t, N_Vector state, N_Vector rate, N_Vector out, void *unused) {
  (void)t, (void)unused;
  double *F = NV_DATA_S(out), *du = NV_DATA_S(rate);
  train_side(NV_DATA_S(state), F);
  for (int i = 0; i < size; i++) F[i] = (i < 4 * count && i % 4 == 1 ? 0 : du[i]) - F[i];
  return 0;
}

#define AT(row, column) SM_ELEMENT_B(J, row, column)

/* c M - df/du. */
static int jacobian(realtype t, realtype c, N_Vector state, N_Vector rate, N_Vector res, SUNMatrix J, void *unused,
                    N_Vector t1, N_Vector t2, N_Vector t3) {
  (void)t, (void)rate, (void)res, (void)unused, (void)t1, (void)t2, (void)t3;
  static const int column[3] = {0, 2, 3};
  const double *u = NV_DATA_S(state);
  Streams o;
  DrumStreams drum;
  SUNMatZero(J);
  for (int j = 0; j < count; j++) {
    const int at = 4 * j, up = at + 4, last = j == count - 1;
    const int ethanol = last ? up : up + 2, water = ethanol + 1;
    double y = u[at + 1], E = j ? holder[j].efficiency : 1;
    streams(j, u + at, &o, 1);
    for (int i = 0; i < 3; i++) {
      int k = at + column[i];
      double V = o.V_u[i], h = o.h * o.L_u[i] + o.L * o.h_u[i], n = o.x * o.L_u[i] + o.L * o.x_u[i], w = o.L_u[i] - n;
      AT(at, k) += o.H * V + h + holder[j].loss * o.T_u[i];
      AT(at + 2, k) += y * V + n;
      AT(at + 3, k) += (1 - y) * V + w;
      AT(at + 1, k) -= E * o.y_star_x * o.x_u[i];
      if (!last) AT(up, k) -= o.H * V;
      AT(ethanol, k) -= y * V;
      AT(water, k) -= (1 - y) * V;
      if (j) AT(at - 4, k) -= h, AT(at - 2, k) -= n, AT(at - 1, k) -= w;
      AT(k, k) += c;
    }
    AT(at, at + 1) += o.V * o.H_y, AT(at + 2, at + 1) += o.V, AT(at + 3, at + 1) -= o.V, AT(at + 1, at + 1) += 1;
    if (!last) AT(up, at + 1) -= o.V * o.H_y, AT(up + 1, at + 1) -= 1 - holder[j + 1].efficiency;
    AT(ethanol, at + 1) -= o.V, AT(water, at + 1) += o.V;
  }
  const int d = 4 * count, top = d - 4;
  drum_streams(u + d, &drum);
  for (int i = 0; i < 2; i++) {
    double n = drum.rate_u[i] * drum.x + drum.rate * drum.x_u[i], w = drum.rate_u[i] - n;
    AT(d, d + i) += n, AT(d + 1, d + i) += w, AT(d + i, d + i) += c;
    AT(top, d + i) -= share * (drum.rate_u[i] * drum.h + drum.rate * drum.h_u[i]);
    AT(top + 2, d + i) -= share * n, AT(top + 3, d + i) -= share * w;
  }
  return 0;
}

/* The library's error weights: vapours count by what flows of them, plates a third until every holder boils and runs over. */
static double tolerance_now;
static int filling;

static int our_weights(N_Vector state, N_Vector out, void *unused) {
  (void)unused;
  double flows[MOST], nominal = heat / LAMBDA0;
  int was_filling = filling;
  if (filling) {
    Streams o;
    filling = 0;
    for (int j = 0; j < count; j++) {
      streams(j, NV_DATA_S(state) + 4 * j, &o, 0);
      flows[j] = larger(0.01, o.V / nominal);
      if (o.V < 0.01 * nominal || (j && o.L < 0.01 * nominal)) filling = 1;
    }
  }
  for (int i = 0; i < size; i++) {
    int drum = i >= 4 * count, vapour = !drum && i % 4 == 1;
    double weight = tolerance_now * (drum ? drum_scale : vapour ? 1 : holder[i / 4].scale);
    weight *= drum ? 0.25 : vapour ? 10 : i < 4 || i % 4 == 0 ? 1 : 3;
    if (vapour && was_filling && flows[i / 4] < 1) weight /= flows[i / 4];
    if (filling && !drum && i >= 4) weight *= 3;
    NV_Ith_S(out, i) = 1 / weight;
  }
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
  if (argc < 4) return fprintf(stderr, "usage: ida TRAIN REPEATS TOLERANCE...\n"), 2;
  read_train(argv[1]);
  int repeats = atoi(argv[2]), outputs = 0;
  for (int p = 0; p < phases; p++) outputs += (int)(seconds[p] / 60 + 0.5);

  SUNContext context;
  SUNContext_Create(NULL, &context);
  N_Vector u = N_VNew_Serial(size, context), du = N_VNew_Serial(size, context), id = N_VNew_Serial(size, context),
           weights = N_VNew_Serial(size, context);
  SUNMatrix J = SUNBandMatrix(size, 7, 7, context);
  SUNLinearSolver solver = SUNLinSol_Band(u, J, context);
  void *ida = IDACreate(context);
  double *times = malloc(repeats * sizeof *times), *spout = malloc(outputs * sizeof *spout);
  for (int i = 0; i < size; i++) NV_Ith_S(id, i) = i < 4 * count && i % 4 == 1 ? 0 : 1;
  N_VConst(0, du);
  for (int i = 0; i < size; i++) NV_Ith_S(u, i) = start[i];
  N_VConst(1, weights);
  IDAInit(ida, residual, 0, u, du);
  IDASVtolerances(ida, 0, weights);
  IDASetLinearSolver(ida, solver, J);
  IDASetJacFn(ida, getenv("DIFFERENCES") ? NULL : jacobian);
  IDASetId(ida, id);
  IDASetMaxNumSteps(ida, 1000000);

  for (int ours = 0; ours < 2; ours++) {
    for (int a = 3; a < argc; a++) {
      double tolerance = atof(argv[a]);
      for (int i = 0; i < size; i++) {
        int drum = i >= 4 * count, vapour = !drum && i % 4 == 1;
        NV_Ith_S(weights, i) = tolerance * (drum ? drum_scale : vapour ? 1 : holder[i / 4].scale);
      }
      tolerance_now = tolerance;
      if (ours) IDAWFtolerances(ida, our_weights);
      else IDASVtolerances(ida, 0, weights);
      long steps = 0, sides = 0, jacobians = 0;
      for (int r = 0; r < repeats; r++) {
        double from = 0, begin = now_ms(), t;
        int next = 0;
        steps = sides = jacobians = 0;
        for (int i = 0; i < size; i++) NV_Ith_S(u, i) = start[i];
        for (int p = 0; p < phases; p++) {
          long more;
          share = returned[p], filling = 1;
          train_side(NV_DATA_S(u), NV_DATA_S(du));
          for (int i = 1; i < 4 * count; i += 4) NV_Ith_S(du, i) = 0;
          IDAReInit(ida, from, u, du);
          IDASetStopTime(ida, from + seconds[p]);
          for (double s = 60; s <= seconds[p] * (1 + 1e-12); s += 60) {
            int flag = IDASolve(ida, from + s, &t, u, du, IDA_NORMAL);
            if (flag < 0) return fprintf(stderr, "IDA failed (%d)\n", flag), 1;
            spout[next++] = NV_Ith_S(u, size - 2) / (NV_Ith_S(u, size - 2) + NV_Ith_S(u, size - 1));
          }
          from += seconds[p];
          IDAGetNumSteps(ida, &more), steps += more;
          IDAGetNumResEvals(ida, &more), sides += more;
          IDAGetNumJacEvals(ida, &more), jacobians += more;
        }
        times[r] = now_ms() - begin;
      }
      qsort(times, repeats, sizeof *times, by_size);
      printf("%s %s %.5f %.5f %ld %ld %ld", ours ? "ours" : "even", argv[a], times[0], times[repeats / 2], steps, sides, jacobians);
      for (int i = 0; i < outputs; i++) printf(" %.15g", spout[i]);
      printf("\n");
    }
  }
  return 0;
}
