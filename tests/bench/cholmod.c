/* Times supernodal CHOLMOD on one matrix, as the yardstick of sparse.bench.ts.
   Input file, native byte order: int32 n, int32 nnz, int32 colStart[n + 1], int32 rowIndex[nnz], float64 value[nnz],
   lower triangle by columns. Output: one line, "analyse factorise solve" in CPU seconds, factorise and solve the least
   of the repeats given on the command line, then the largest |x| of K x = 1.
   cc -O2 cholmod.c -o cholmod -lcholmod -I/usr/include/suitesparse */
#include <cholmod.h>
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static double seconds(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

int main(int count, char **words) {
  if (count != 3) return 2;
  FILE *file = fopen(words[1], "rb");
  int repeats = atoi(words[2]);
  int size[2];
  if (!file || fread(size, sizeof(int), 2, file) != 2) return 2;
  cholmod_common c;
  cholmod_start(&c);
  c.supernodal = CHOLMOD_SUPERNODAL;
  cholmod_sparse *k = cholmod_allocate_sparse(size[0], size[0], size[1], 1, 1, -1, CHOLMOD_REAL, &c);
  if (fread(k->p, sizeof(int), size[0] + 1, file) != (size_t)size[0] + 1) return 2;
  if (fread(k->i, sizeof(int), size[1], file) != (size_t)size[1]) return 2;
  if (fread(k->x, sizeof(double), size[1], file) != (size_t)size[1]) return 2;
  fclose(file);
  double from = seconds();
  cholmod_factor *l = cholmod_analyze(k, &c);
  double analyse = seconds() - from, factorise = INFINITY, solve = INFINITY, largest = 0;
  cholmod_dense *b = cholmod_ones(size[0], 1, CHOLMOD_REAL, &c);
  for (int r = 0; r < repeats; r++) {
    from = seconds();
    if (!cholmod_factorize(k, l, &c) || c.status != CHOLMOD_OK) return 3;
    factorise = fmin(factorise, seconds() - from);
    from = seconds();
    cholmod_dense *x = cholmod_solve(CHOLMOD_A, l, b, &c);
    solve = fmin(solve, seconds() - from);
    for (int i = 0; i < size[0]; i++) largest = fmax(largest, fabs(((double *)x->x)[i]));
    cholmod_free_dense(&x, &c);
  }
  printf("%.9g %.9g %.9g %.17g\n", analyse, factorise, solve, largest);
  return 0;
}
