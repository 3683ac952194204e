/*
 * Robertson's problem with CVODE (SUNDIALS), as its own example cvRoberts poses it, here to a tight tolerance; prints the state at
 * t = 40, 4e5 and 4e10. Build: gcc -O2 -o outside-solvers outside-solvers.c -lsundials_cvode -lsundials_nvecserial
 * -lsundials_sunmatrixdense -lsundials_sunlinsoldense -lm
 */
#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <sundials/sundials_types.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

static int rates(realtype t, N_Vector y, N_Vector dy, void *data) {
  (void)t, (void)data;
  realtype a = NV_Ith_S(y, 0), b = NV_Ith_S(y, 1), c = NV_Ith_S(y, 2);
  NV_Ith_S(dy, 0) = -0.04 * a + 1e4 * b * c;
  NV_Ith_S(dy, 2) = 3e7 * b * b;
  NV_Ith_S(dy, 1) = -NV_Ith_S(dy, 0) - NV_Ith_S(dy, 2);
  return 0;
}

int main(void) {
  SUNContext context;
  if (SUNContext_Create(NULL, &context)) return 1;
  N_Vector y = N_VNew_Serial(3, context), absolute = N_VNew_Serial(3, context);
  NV_Ith_S(y, 0) = 1, NV_Ith_S(y, 1) = 0, NV_Ith_S(y, 2) = 0;
  NV_Ith_S(absolute, 0) = 1e-15, NV_Ith_S(absolute, 1) = 1e-20, NV_Ith_S(absolute, 2) = 1e-13;
  void *solver = CVodeCreate(CV_BDF, context);
  SUNMatrix matrix = SUNDenseMatrix(3, 3, context);
  SUNLinearSolver linear = SUNLinSol_Dense(y, matrix, context);
  if (CVodeInit(solver, rates, 0, y) || CVodeSVtolerances(solver, 1e-10, absolute) ||
      CVodeSetLinearSolver(solver, linear, matrix) || CVodeSetMaxNumSteps(solver, 100000))
    return 1;
  double times[] = {40, 4e5, 4e10};
  printf("[");
  for (int i = 0; i < 3; i++) {
    realtype reached;
    if (CVode(solver, times[i], y, &reached, CV_NORMAL) < 0) return 1;
    printf("%s{\"time\": %.17g, \"state\": [%.17g, %.17g, %.17g]}", i ? ", " : "", times[i], NV_Ith_S(y, 0),
           NV_Ith_S(y, 1), NV_Ith_S(y, 2));
  }
  printf("]\n");
  return 0;
}
