/**
 * Solves sparse symmetric positive definite systems: factor once, solve for many right-hand sides.
 *
 * <p><b>In:</b> a {@link corewright.linear.BlockMatrix}, which is a graph of nodes with a few unknowns each, and a place
 * (x, y) for every node. <b>Out:</b> a {@link corewright.linear.Cholesky} that solves, and that gives {@code g' K⁻¹ f} for
 * sparse f and g at the price of a short forward substitution, all of them of a list at once, or the Schur complement that
 * is left on some nodes.
 *
 * <p><b>Steps.</b> (1) {@link corewright.linear.Dissection} halves the nodes along their longer extent until few are
 * left; those that separate two halves come last, which makes a tree of dense fronts; (2) each front takes its own
 * entries and what its children left over; (3) a dense partial Cholesky eliminates its own unknowns; (4) forward and
 * backward substitution walk the tree up and down. Branches of the tree run in parallel; every sum has a fixed order, so
 * results do not depend on the number of cores.
 *
 * <p>Units: none. Dense blocks are row-major.
 *
 * <p>Sources: I. S. Duff and J. K. Reid, The multifrontal solution of indefinite sparse symmetric linear equations, ACM
 * Trans. Math. Softw. 9 (1983); A. George, Nested dissection of a regular finite element mesh, SIAM J. Numer. Anal. 10
 * (1973).
 */
@NullMarked
package corewright.linear;

import org.jspecify.annotations.NullMarked;
