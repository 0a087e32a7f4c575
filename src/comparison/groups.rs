//! Groups of campaigns that cannot be told apart.
//!
//! "Not told apart" is not transitive: A may be so from B, and B from C, while A and C differ. A
//! campaign is therefore of as many groups as it takes: two have a group in common exactly if
//! they cannot be told apart.

/// Most groups that are looked for: more would not be read.
pub const MOST_GROUPS: usize = 1000;

/// All largest sets of ranks, from zero up to `count`, of which no two differ, by their first
/// and last; a rank that differs from all others is a set of its own. `None` where there are
/// more than [`MOST_GROUPS`].
///
/// ```
/// use simmerline::comparison::groups::groups;
/// // The first and the last of three differ, and no others do.
/// let found = groups(3, |one, two| (one, two) == (0, 2)).unwrap();
/// assert_eq!(found, [vec![0, 1], vec![1, 2]]);
/// ```
///
/// # Source
/// The compact letter display: Piepho 2004, Journal of Computational and Graphical Statistics 13,
/// 456–466, from memory. Its columns after inserting and absorbing are the largest sets without
/// a pair that differs; they are found here by the algorithm of Bron and Kerbosch 1973 with a
/// pivot, from memory. DIFFERENCE: columns that others make redundant are kept.
pub fn groups(count: usize, differ: impl Fn(usize, usize) -> bool) -> Option<Vec<Vec<usize>>> {
    if count == 0 {
        return Some(Vec::new());
    }
    let mut alike = vec![Set::new(count); count];
    for one in 0..count {
        for two in one + 1..count {
            if !differ(one, two) {
                alike[one].add(two);
                alike[two].add(one);
            }
        }
    }
    let mut all = Set::new(count);
    (0..count).for_each(|one| all.add(one));
    let mut search = Search {
        alike,
        found: Vec::new(),
    };
    search.extend(&mut Vec::new(), all, Set::new(count))?;
    let mut found = search.found;
    found.sort_by_key(|group| (group[0], group.last().copied()));
    Some(found)
}

/// The largest set of ranks of which each is linked with each, straight or over others; of two
/// as large that with the best rank. Empty where no two are linked.
pub fn largest_connected(count: usize, are_linked: impl Fn(usize, usize) -> bool) -> Vec<usize> {
    let mut largest: Vec<usize> = Vec::new();
    let mut is_seen = vec![false; count];
    for start in 0..count {
        if is_seen[start] {
            continue;
        }
        is_seen[start] = true;
        let (mut reached, mut next) = (vec![start], 0);
        while let Some(&one) = reached.get(next) {
            for (other, seen) in is_seen.iter_mut().enumerate() {
                if !*seen && are_linked(one, other) {
                    *seen = true;
                    reached.push(other);
                }
            }
            next += 1;
        }
        if reached.len() > largest.len().max(1) {
            largest = reached;
        }
    }
    largest.sort_unstable();
    largest
}

/// Ranks, a bit each.
#[derive(Debug, Clone)]
struct Set(Vec<u64>);

impl Set {
    fn new(count: usize) -> Set {
        Set(vec![0; count.div_ceil(64)])
    }

    fn add(&mut self, one: usize) {
        self.0[one / 64] |= 1 << (one % 64);
    }

    fn remove(&mut self, one: usize) {
        self.0[one / 64] &= !(1 << (one % 64));
    }

    fn is_empty(&self) -> bool {
        self.0.iter().all(|word| *word == 0)
    }

    fn and(&self, other: &Set) -> Set {
        let words = self.0.iter().zip(&other.0);
        Set(words.map(|(one, two)| one & two).collect())
    }

    fn without(&self, other: &Set) -> Set {
        let words = self.0.iter().zip(&other.0);
        Set(words.map(|(one, two)| one & !two).collect())
    }

    fn len(&self) -> u32 {
        self.0.iter().map(|word| word.count_ones()).sum()
    }

    fn iter(&self) -> impl Iterator<Item = usize> + '_ {
        let words = self.0.iter().enumerate();
        words.flat_map(|(place, word)| {
            let bits = (0..64).filter(move |bit| word >> bit & 1 == 1);
            bits.map(move |bit| place * 64 + bit)
        })
    }
}

struct Search {
    /// Those that each is alike.
    alike: Vec<Set>,
    found: Vec<Vec<usize>>,
}

impl Search {
    /// Extends a group by the candidates; `done` are those whose groups have been found. `None`
    /// once there are too many.
    fn extend(&mut self, group: &mut Vec<usize>, mut open: Set, mut done: Set) -> Option<()> {
        if open.is_empty() && done.is_empty() {
            let mut members = group.clone();
            members.sort_unstable();
            self.found.push(members);
            return (self.found.len() <= MOST_GROUPS).then_some(());
        }
        let pivots = open.iter().chain(done.iter());
        let pivot = pivots.max_by_key(|one| open.and(&self.alike[*one]).len())?;
        let next: Vec<usize> = open.without(&self.alike[pivot]).iter().collect();
        for one in next {
            let alike = self.alike[one].clone();
            group.push(one);
            self.extend(group, open.and(&alike), done.and(&alike))?;
            group.pop();
            open.remove(one);
            done.add(one);
        }
        Some(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Columns by inserting and absorbing, step by step as the paper has it.
    fn by_the_paper(count: usize, differ: impl Fn(usize, usize) -> bool) -> Vec<Vec<usize>> {
        let mut columns: Vec<Vec<usize>> = vec![(0..count).collect()];
        for one in 0..count {
            for two in (one + 1..count).filter(|two| differ(one, *two)) {
                let mut next = Vec::new();
                for column in columns {
                    if column.contains(&one) && column.contains(&two) {
                        next.extend([one, two].map(|gone| {
                            let kept = column.iter().copied().filter(|it| *it != gone);
                            kept.collect::<Vec<usize>>()
                        }));
                    } else {
                        next.push(column);
                    }
                }
                next.sort();
                next.dedup();
                let all = next.clone();
                next.retain(|column| {
                    let within = |other: &Vec<usize>| {
                        other != column && column.iter().all(|it| other.contains(it))
                    };
                    !all.iter().any(within)
                });
                columns = next;
            }
        }
        columns.sort_by_key(|group| (group[0], group.last().copied()));
        columns
    }

    #[test]
    fn groups_are_those_of_the_compact_letter_display() {
        for seed in 0..60_usize {
            let count = 2 + seed % 9;
            // Any pattern, intransitive ones too.
            let differ = |one: usize, two: usize| (one * 7 + two * 13 + seed * 5) % 11 < 4;
            let mut found = groups(count, differ).unwrap();
            let mut expected = by_the_paper(count, differ);
            found.sort();
            expected.sort();
            assert_eq!(found, expected, "seed {seed}");
            for one in 0..count {
                for two in one + 1..count {
                    let holds = |group: &&Vec<usize>| group.contains(&one) && group.contains(&two);
                    assert_eq!(found.iter().find(holds).is_none(), differ(one, two));
                }
            }
        }
    }

    #[test]
    fn those_that_are_linked_with_the_most_are_kept() {
        // 0–2–4 and 1–3.
        let linked = |one: usize, two: usize| one.abs_diff(two) == 2;
        assert_eq!(largest_connected(5, linked), [0, 2, 4]);
        assert_eq!(largest_connected(4, linked), [0, 2]);
        assert!(largest_connected(3, |_, _| false).is_empty());
    }

    #[test]
    fn two_hundred_take_no_time_and_too_many_groups_are_none() {
        let near = groups(200, |one, two| one.abs_diff(two) > 15).unwrap();
        assert_eq!(near.len(), 200 - 15);
        // Pairs that differ, and no others: 2 to the power of 20 groups.
        assert_eq!(groups(40, |one, two| one / 2 == two / 2), None);
    }
}
