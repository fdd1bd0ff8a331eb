# apply.pl TREE LIST: writes every mutant of the list into the sources of the tree, each behind its number, and prints
# a line a mutant: number, rule, place, what it becomes, why it is equivalent (tabs between).
use strict;
use warnings;

my ($tree, $list) = @ARGV;
my (%text, @mutants);
open(my $lines, '<', $list) or die "$list: $!";
while (my $line = <$lines>) {
    chomp $line;
    next if $line =~ /^\s*(#|$)/;
    my ($rule, $file, $place, $becomes, $why) = map { s/\\\|/|/gr } split(/ \| /, $line);
    $place =~ s/\\n/\n/g;
    my ($before, $old, $after) = $place =~ /^(.*?)\[\[(.*?)\]\](.*)$/s or die "$list:$.: no [[ ]]\n";
    $text{$file} //= do { local $/; open(my $in, '<', "$tree/$file") or die "$file: $!"; <$in> };
    my $whole = $before . $old . $after;
    my $first = index($text{$file}, $whole);
    die "$list:$.: stands nowhere in $file: $whole\n" if $first < 0;
    die "$list:$.: stands more than once in $file: $whole\n" if index($text{$file}, $whole, $first + 1) >= 0;
    push @mutants, [scalar(@mutants) + 1, $rule, $file, $first + length($before), $old, $becomes, $why // ''];
}
# From the end of each file, so that places keep their positions; of two in one place the shorter goes inside.
for my $m (sort { $b->[3] <=> $a->[3] or length($a->[4]) <=> length($b->[4]) } @mutants) {
    my ($number, undef, $file, $position, $old, $becomes) = @$m;
    my $now = substr($text{$file}, $position, length($old));
    die "mutant $number overlaps another in $file: $old\n" if $now ne $old;
    substr($text{$file}, $position, length($old)) = "(ywMutant($number) ? ($becomes) : ($old))";
}
for my $file (keys %text) {
    open(my $out, '>', "$tree/$file") or die "$file: $!";
    print $out $text{$file};
}
for my $m (@mutants) {
    my ($number, $rule, $file, undef, $old, $becomes, $why) = @$m;
    print join("\t", $number, $rule, "$file: $old", $becomes, $why), "\n";
}
